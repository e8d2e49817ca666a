package orlop.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a text may stand, told by a rule and not by the places themselves: these are worked out only when they are wanted.
 * Equal rules give equal places in equal order, so that two labels are compared without working them out.
 */
public interface Spots {
    /** The places, at least one. */
    List<Spot> all();

    /** These places and no others. */
    record Given(List<Spot> all) implements Spots {
        public Given {
            all = List.copyOf(all);
            if (all.isEmpty()) {
                throw new IllegalArgumentException("no spot");
            }
        }
    }

    /** The places of a rule, each so much worse. */
    record Worse(Spots spots, double by) implements Spots {
        @Override
        public List<Spot> all() {
            List<Spot> out = new ArrayList<>();
            spots.all().forEach(s -> out.add(new Spot(s.rect(), s.side(), s.cost() + by)));
            return out;
        }
    }

    /** The places of several rules, one after the other. */
    record Joined(List<Spots> parts) implements Spots {
        public Joined {
            parts = List.copyOf(parts);
        }

        @Override
        public List<Spot> all() {
            List<Spot> out = new ArrayList<>();
            parts.forEach(p -> out.addAll(p.all()));
            return out;
        }
    }
}

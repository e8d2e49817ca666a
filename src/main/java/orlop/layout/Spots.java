package orlop.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Where a text may stand, told by a rule and not by the places themselves: these are worked out only when they are wanted.
 * Equal rules give equal places in equal order, so that two labels are compared without working them out.
 */
public interface Spots {
    /** The places, at least one. */
    List<Spot> all();

    /** The same places in the same order, in parts of which each is worked out by itself. */
    default List<Part> parts() {
        return List.of(new Part(0, this::all));
    }

    /**
     * Some of the places.
     *
     * @param least none of them costs less
     * @param maker works them out
     */
    record Part(double least, Supplier<List<Spot>> maker) {
        List<Spot> all() {
            return maker.get();
        }
    }

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
            spots.all().forEach(s -> out.add(worse(s)));
            return out;
        }

        @Override
        public List<Part> parts() {
            List<Part> out = new ArrayList<>();
            for (Part p : spots.parts()) {
                out.add(new Part(
                        p.least + by, () -> p.all().stream().map(this::worse).toList()));
            }
            return out;
        }

        private Spot worse(Spot s) {
            return new Spot(s.rect(), s.side(), s.cost() + by);
        }
    }

    /** The places of several rules, one after the other. */
    record Joined(List<Spots> rules) implements Spots {
        public Joined {
            rules = List.copyOf(rules);
        }

        @Override
        public List<Spot> all() {
            List<Spot> out = new ArrayList<>();
            rules.forEach(r -> out.addAll(r.all()));
            return out;
        }

        @Override
        public List<Part> parts() {
            List<Part> out = new ArrayList<>();
            rules.forEach(r -> out.addAll(r.parts()));
            return out;
        }
    }
}

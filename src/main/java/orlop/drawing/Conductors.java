package orlop.drawing;

/** The conductors of a cable. */
public enum Conductors implements Named {
    /** A positive and a negative. */
    TWO_WIRE,
    /** One conductor alone: a battery lead, a starter lead, a strap between blocks. */
    SINGLE,
    L_N,
    L_N_PE,
    L3 {
        @Override
        public String word() {
            return "3";
        }
    },
    L3_PE {
        @Override
        public String word() {
            return "3-pe";
        }
    },
    L3_N {
        @Override
        public String word() {
            return "3-n";
        }
    },
    L3_N_PE {
        @Override
        public String word() {
            return "3-n-pe";
        }
    },
    /** A protective or bonding conductor. */
    PE;

    /** How many conductors there are, the protective one counted. */
    public int count() {
        return switch (this) {
            case SINGLE, PE -> 1;
            case TWO_WIRE, L_N -> 2;
            case L_N_PE, L3 -> 3;
            case L3_PE, L3_N -> 4;
            case L3_N_PE -> 5;
        };
    }

    /** Whether one of them is a protective conductor. */
    public boolean hasPe() {
        return this == L_N_PE || this == L3_PE || this == L3_N_PE || this == PE;
    }
}

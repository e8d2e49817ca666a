package orlop.drawing;

/** The phases that a load or source is connected to. */
public enum Phase implements Named {
    L1,
    L2,
    L3,
    L1_L2,
    L2_L3,
    L3_L1,
    ALL {
        @Override
        public String word() {
            return "all";
        }
    };

    @Override
    public String word() {
        return name().replace('_', '-');
    }
}

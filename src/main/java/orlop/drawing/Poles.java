package orlop.drawing;

/** Which poles a device stands in. */
public enum Poles implements Named {
    POSITIVE,
    NEGATIVE,
    BOTH,
    L,
    L_N,
    L3 {
        @Override
        public String word() {
            return "3";
        }
    },
    L3_N {
        @Override
        public String word() {
            return "3-n";
        }
    }
}

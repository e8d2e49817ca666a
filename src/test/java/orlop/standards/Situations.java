package orlop.standards;

/** Cable situations for tests, plain ones first. */
final class Situations {
    private Situations() {}

    /** One DC pair alone on a surface, 30 °C, outside engine spaces. */
    static CableSituation alone(double areaMm2, double insulationC) {
        return at(areaMm2, insulationC, 1, 30, false);
    }

    static CableSituation at(double areaMm2, double insulationC, int circuits, double ambientC, boolean engineSpace) {
        return new CableSituation(
                areaMm2, insulationC, Laying.ON_SURFACE, Construction.SINGLE_CORE, 2, circuits, ambientC, engineSpace);
    }

    static CableSituation laid(
            double areaMm2, double insulationC, Laying laying, Construction construction, int loaded) {
        return new CableSituation(areaMm2, insulationC, laying, construction, loaded, 1, 30, false);
    }

    static AmpacityResult.Carries carries(AmpacityResult result) {
        return result.carries().orElseThrow(() -> new AssertionError("no value: " + result));
    }

    static double amps(Ampacity ampacity, CableSituation situation) {
        return carries(ampacity.of(situation)).amps();
    }

    static AmpacityResult.Reason reason(Ampacity ampacity, CableSituation situation) {
        AmpacityResult result = ampacity.of(situation);
        return result.noValue()
                .orElseThrow(() -> new AssertionError("a value: " + result))
                .reason();
    }
}

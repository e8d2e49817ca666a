package orlop.cli;

import java.awt.GraphicsEnvironment;

/**
 * What the last resort of {@link Display} runs in a Java of its own, which may be spoilt by it. Uses nothing but the JDK.
 * Must not be loaded in the program itself.
 */
final class DisplayCheck {
    private DisplayCheck() {}

    /** Ends normally if a screen is there. */
    public static void main(String[] args) {
        int screens = GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length;
        if (screens == 0) {
            throw new IllegalStateException("no screen");
        }
    }
}

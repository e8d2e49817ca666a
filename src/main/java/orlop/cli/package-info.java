/**
 * The way in: {@link orlop.cli.Main}, the commands, and the probe that says whether windows can be shown.
 *
 * <p>The only room that ends the process, and that prints. It may use every other room; none may use it.
 * {@link orlop.cli.Display} must be asked before the first AWT class is loaded.
 */
@NullMarked
package orlop.cli;

import org.jspecify.annotations.NullMarked;

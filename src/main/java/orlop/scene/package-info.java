/**
 * A sheet as plain data in millimetres: drawing, results and findings become items in the order of painting, each with
 * the thing that it stands for, words for a person who does not see it, and its marks.
 *
 * <p>{@link orlop.scene.SceneBuilder} makes a {@link orlop.scene.Scene} from a {@link orlop.scene.SceneRequest}. Colours
 * are names ({@link orlop.scene.Ink}) until a {@link orlop.scene.Palette} gives them values. What may not be here: AWT
 * fonts, Swing, files, pixels. Every type is immutable and safe to share between threads.
 */
@NullMarked
package orlop.scene;

import org.jspecify.annotations.NullMarked;

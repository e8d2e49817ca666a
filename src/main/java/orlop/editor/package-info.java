/**
 * Everything Swing: the window, the sheet on the screen, the card and the notes in its margin.
 *
 * <p>Widgets never change the drawing and never listen to each other: each calls the {@link orlop.desk.Session} and is
 * told by it what has changed. {@link orlop.editor.EditorApp#open} is the way in.
 *
 * <p>All classes here belong to the event dispatch thread unless they say otherwise. Null rule: nothing is null unless
 * it is marked {@code @Nullable}.
 */
@NullMarked
package orlop.editor;

import org.jspecify.annotations.NullMarked;

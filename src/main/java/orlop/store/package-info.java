/**
 * File to drawing and back: versioned JSON under a shipped schema, atomic save, fragments for the clipboard.
 *
 * <p>{@link orlop.store.DrawingFile} is the one door. A file that cannot be read gives exactly one
 * {@link orlop.store.FileProblem}: file, place, cause, cure. Which key of the file is which record component is found by
 * reflection ({@code Shape}); a new particular of a kind needs no line here, only a newly generated schema.
 *
 * <p>What may not be here: Swing, the study. Jackson and the schema validator are used here and in no type that others
 * see.
 *
 * <p>Null rule: nothing is null unless it is marked {@code @Nullable}. Everything is safe to share between threads.
 */
@NullMarked
package orlop.store;

import org.jspecify.annotations.NullMarked;

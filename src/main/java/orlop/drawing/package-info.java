/**
 * The document: everything that a person enters and nothing that is worked out.
 *
 * <p>A {@link orlop.drawing.Drawing} is an immutable record of ledgers (vessel particulars, electrical systems,
 * operating conditions, sheets, components, cables, links …). An {@link orlop.drawing.Edit} is a function from drawing
 * to drawing; {@link orlop.drawing.History} undoes by keeping the old drawing.
 *
 * <p>What may not be here: AWT, any library but jspecify, any table of a standard, any sentence of a language
 * ({@link orlop.drawing.Message} carries a key with typed arguments; {@link orlop.drawing.Words} finds the text).
 *
 * <p>Null rule: nothing is null unless it is marked {@code @Nullable}; a nullable particular means "not known". Every
 * type here is immutable and safe to share between threads, save {@link orlop.drawing.History}.
 */
@NullMarked
package orlop.drawing;

import org.jspecify.annotations.NullMarked;

/**
 * Scenes painted: one {@link orlop.render.Painter} drives a small {@link orlop.render.Surface}, of which there are two:
 * Graphics2D (screen, PNG) and SVG.
 *
 * <p>What may not be here: Swing. The same scene, palette and symbols give the same bytes in every locale. Only what all
 * surfaces do alike is used: solid colours, plain strokes, outlines, text of the one bundled font.
 */
@NullMarked
package orlop.render;

import org.jspecify.annotations.NullMarked;

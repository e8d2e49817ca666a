/**
 * A drawing in one operating condition as an electrical graph: energised islands, what feeds what, path lengths.
 *
 * <p>The one user of JGraphT; no graph of it leaves the room. Links, closed switches and all else without impedance are
 * contracted to one node; nothing is ever given a tiny resistance. What may not be here: results, AWT.
 */
@NullMarked
package orlop.network;

import org.jspecify.annotations.NullMarked;

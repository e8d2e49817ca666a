/**
 * How a figure came about, for a person who wants to follow it with a pencil: trees of quantity, symbol, formula, value
 * and source.
 *
 * <p>Made on demand for one item, from the very objects that calculated it. Every formula is written in the symbols of
 * its inputs and in their units, and gives the value when they are put in; tests do that for every figure of the samples.
 */
@NullMarked
package orlop.study.working;

import org.jspecify.annotations.NullMarked;

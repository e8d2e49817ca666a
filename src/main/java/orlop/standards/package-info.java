/**
 * Published data: conductors, ampacity and its correction factors, device families, rule sets, adiabatic constants.
 *
 * <p>The figures stand as CSV resources beside this package's classes (see {@code SOURCES.txt} there); each row names its
 * {@link orlop.standards.Provenance} and source, and nothing is read out without them. All types are immutable and safe
 * for any thread; the tables are read once. A broken table is a bug and throws {@link IllegalStateException} naming file
 * and line; a question that the tables can't answer yields a result that says why.
 *
 * <p>May not be here: the drawing, results, sentences for people (reasons are enums), AWT, any library but jspecify.
 */
@org.jspecify.annotations.NullMarked
package orlop.standards;

/** placeholder. */
@org.jspecify.annotations.NullMarked
package orlop.drawing;

package orlop.study.flow;

import java.util.Arrays;
import orlop.study.linear.Patterns;

/**
 * A direct-current circuit: nodes, the reference (number −1), parts between them. Currents count from a through the
 * part to b. Values can be changed, the structure can't once it is solved.
 */
public final class Circuit {
    private final int nodes;
    private final Patterns patterns;
    private int count;
    private Part[] parts = new Part[16];
    private int[] a = new int[16];
    private int[] b = new int[16];
    private double[] first = new double[16];
    private double[] second = new double[16];
    private double[] third = new double[16];

    /**
     * A circuit of this many nodes and no parts.
     *
     * @param patterns of the equations of this and of other circuits of the same study
     */
    public Circuit(int nodes, Patterns patterns) {
        this.nodes = nodes;
        this.patterns = patterns;
    }

    public Patterns patterns() {
        return patterns;
    }

    /**
     * Adds a part and returns its number.
     *
     * @param nodeA its first node
     * @param nodeB its second node, −1 for the reference
     */
    public int add(Part part, int nodeA, int nodeB, double firstValue, double secondValue, double thirdValue) {
        if (count == a.length) {
            parts = Arrays.copyOf(parts, 2 * count);
            a = Arrays.copyOf(a, 2 * count);
            b = Arrays.copyOf(b, 2 * count);
            first = Arrays.copyOf(first, 2 * count);
            second = Arrays.copyOf(second, 2 * count);
            third = Arrays.copyOf(third, 2 * count);
        }
        parts[count] = part;
        a[count] = nodeA;
        b[count] = nodeB;
        first[count] = firstValue;
        second[count] = secondValue;
        third[count] = thirdValue;
        return count++;
    }

    public int nodeCount() {
        return nodes;
    }

    public int partCount() {
        return count;
    }

    public Part part(int number) {
        return parts[number];
    }

    public int a(int number) {
        return a[number];
    }

    public int b(int number) {
        return b[number];
    }

    public double first(int number) {
        return first[number];
    }

    public double second(int number) {
        return second[number];
    }

    public double third(int number) {
        return third[number];
    }

    public void setFirst(int number, double value) {
        first[number] = value;
    }

    public void setThird(int number, double value) {
        third[number] = value;
    }
}

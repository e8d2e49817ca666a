package orlop.study.working;

import java.util.Map;
import java.util.NoSuchElementException;

/** Puts values into a formula as a person with a pencil would: {@code θa + (θmax − θa) · (min(1; I / Iz))²}. */
final class Formula {
    private final String text;
    private final Map<String, Double> values;
    private int at;

    private Formula(String text, Map<String, Double> values) {
        this.text = text.replace(" ", "");
        this.values = values;
    }

    /** @throws NoSuchElementException if it names a symbol that has no value */
    static double value(String formula, Map<String, Double> values) {
        Formula f = new Formula(formula, values);
        double found = f.sum();
        if (f.at < f.text.length()) {
            throw new IllegalArgumentException("cannot read on at " + f.text.substring(f.at) + " in " + formula);
        }
        return found;
    }

    private boolean take(char c) {
        boolean there = at < text.length() && text.charAt(at) == c;
        at += there ? 1 : 0;
        return there;
    }

    private double sum() {
        double sum = product();
        while (true) {
            if (take('+')) {
                sum += product();
            } else if (take('−')) {
                sum -= product();
            } else {
                return sum;
            }
        }
    }

    private double product() {
        double product = power();
        while (true) {
            if (take('·')) {
                product *= power();
            } else if (take('/')) {
                product /= power();
            } else {
                return product;
            }
        }
    }

    private double power() {
        double base = atom();
        return take('²') ? base * base : base;
    }

    private double atom() {
        if (take('(')) {
            double inner = sum();
            close();
            return inner;
        }
        if (take('√')) {
            return Math.sqrt(atom());
        }
        int start = at;
        while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        String word = text.substring(start, at);
        if (word.equals("min") || word.equals("max")) {
            return extreme(word.equals("max"));
        }
        if (!word.isEmpty() && Character.isDigit(word.charAt(0))) {
            return Double.parseDouble(word);
        }
        Double value = values.get(word);
        if (value == null) {
            throw new NoSuchElementException("no value for \"" + word + "\" in " + text);
        }
        return value;
    }

    private double extreme(boolean greatest) {
        if (!take('(')) {
            throw new IllegalArgumentException("no bracket at " + at + " in " + text);
        }
        double found = sum();
        while (take(';')) {
            double next = sum();
            found = greatest ? Math.max(found, next) : Math.min(found, next);
        }
        close();
        return found;
    }

    private void close() {
        if (!take(')')) {
            throw new IllegalArgumentException("bracket not closed at " + at + " in " + text);
        }
    }
}

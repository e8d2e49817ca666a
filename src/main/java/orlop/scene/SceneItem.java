package orlop.scene;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import orlop.layout.Rect;

/**
 * One thing on a sheet.
 *
 * @param id unique on the sheet, letters, digits, {@code _} and {@code -} alone, letter first
 * @param role what it is
 * @param subject tag of the component or cable, id of the link or note, number of the finding in the list that was asked
 *     for ({@code "1"} is the first); "" where there is none
 * @param title words for a person who does not see it
 * @param bounds around its marks
 * @param marks in the order of painting
 * @param data values that it shows, key (a lower-case name with its unit: {@code current-a}) to number or word, in the
 *     order in which they were put in
 */
public record SceneItem(
        String id, Role role, String subject, String title, Rect bounds, List<Mark> marks, Map<String, String> data) {
    public SceneItem {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(bounds, "bounds");
        marks = List.copyOf(marks);
        if (!(data instanceof OnDemand)) { // which nobody can change
            data = data.isEmpty() ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(data));
        }
    }
}

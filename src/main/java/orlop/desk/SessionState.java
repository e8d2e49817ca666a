package orlop.desk;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Sheet;
import orlop.study.Results;

/**
 * All that a window shows, at one moment.
 *
 * @param drawing the drawing at work, as the history has it
 * @param preview what it would be if the mouse were let go now; null while nothing is being dragged
 * @param selection ids of components, cables, links and notes, in the order in which they were chosen
 * @param sheet id of the sheet that is shown; "" while there is none
 * @param condition id of the operating condition that is shown, or {@link Results#GOVERNING}
 * @param review the newest results; null until the first have come
 * @param file where the drawing is kept; null while it never was
 * @param dirty whether the drawing differs from that in the file
 * @param undo what undo would take back; null for nothing
 * @param redo what redo would make again; null for nothing
 * @param notice the last thing that the person should know: a refusal, a thing done; null for nothing
 */
public record SessionState(
        Drawing drawing,
        @Nullable Drawing preview,
        Set<String> selection,
        String sheet,
        String condition,
        @Nullable Review review,
        @Nullable Path file,
        boolean dirty,
        @Nullable Message undo,
        @Nullable Message redo,
        @Nullable Message notice) {
    public SessionState {
        selection = Collections.unmodifiableSet(new LinkedHashSet<>(selection));
    }

    /** The drawing to be shown: the preview while there is one. */
    public Drawing shown() {
        return preview == null ? drawing : preview;
    }

    /** Whether the results belong to the drawing at work. While they don't, they are shown grey. */
    @SuppressWarnings("ReferenceEquality") // the very drawing that was studied
    public boolean fresh() {
        return review != null && review.drawing() == drawing;
    }

    /** The results of the condition that is shown, whichever drawing they belong to. */
    public Optional<Results> results() {
        return review == null ? Optional.empty() : Optional.of(review.study().of(condition));
    }

    /** The sheet that is shown. */
    public Optional<Sheet> shownSheet() {
        return drawing.sheets().find(sheet);
    }

    /** The operating condition that is shown; empty for the governing one. */
    public Optional<OperatingCondition> shownCondition() {
        return drawing.conditions().find(condition);
    }

    /** With these selected. */
    SessionState withSelection(Set<String> chosen) {
        return new SessionState(drawing, preview, chosen, sheet, condition, review, file, dirty, undo, redo, notice);
    }

    /** With another sheet or condition shown. */
    SessionState withView(String shownSheet, String shownCondition) {
        return new SessionState(
                drawing, preview, selection, shownSheet, shownCondition, review, file, dirty, undo, redo, notice);
    }

    /** With this preview, or none. */
    SessionState withPreview(@Nullable Drawing shown) {
        return new SessionState(drawing, shown, selection, sheet, condition, review, file, dirty, undo, redo, notice);
    }

    /** With these results. */
    SessionState withReview(Review newest) {
        return new SessionState(drawing, preview, selection, sheet, condition, newest, file, dirty, undo, redo, notice);
    }

    /** With this said, or nothing. */
    SessionState withNotice(@Nullable Message said) {
        return new SessionState(drawing, preview, selection, sheet, condition, review, file, dirty, undo, redo, said);
    }

    /** Kept there, without a preview. */
    SessionState withFile(@Nullable Path kept, boolean differs) {
        return new SessionState(drawing, null, selection, sheet, condition, review, kept, differs, undo, redo, notice);
    }

    /** The one thing that is selected, if it is one. */
    public Optional<String> soleSelection() {
        return selection.size() == 1 ? Optional.of(selection.iterator().next()) : Optional.empty();
    }
}

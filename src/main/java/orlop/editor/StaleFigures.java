package orlop.editor;

import java.util.List;
import orlop.scene.Ink;
import orlop.scene.Mark;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/** Figures that belong to the drawing before the last edit, in grey: they are still there, and seen to be old. */
final class StaleFigures {
    private StaleFigures() {}

    static Scene of(Scene s) {
        List<SceneItem> items = s.items().stream()
                .map(i -> i.role() == Role.LABEL ? grey(i) : i)
                .toList();
        return new Scene(
                s.sheet(),
                s.title(),
                s.widthMm(),
                s.heightMm(),
                s.drawable(),
                items,
                s.terminals(),
                s.bars(),
                s.routes());
    }

    private static SceneItem grey(SceneItem i) {
        List<Mark> marks = i.marks().stream().map(StaleFigures::grey).toList();
        return new SceneItem(i.id(), i.role(), i.subject(), i.title(), i.bounds(), marks, i.data());
    }

    private static Mark grey(Mark m) {
        if (m instanceof Mark.Text t && t.ink() != Ink.INK) {
            return new Mark.Text(t.xMm(), t.yMm(), t.anchor(), t.sizeMm(), t.weight(), Ink.DEAD, t.text(), t.widthMm());
        }
        return m;
    }
}

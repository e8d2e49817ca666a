package orlop.editor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import orlop.desk.SessionState;
import orlop.desk.SheetExport;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Sheet;
import orlop.scene.Annotations;
import orlop.study.Results;

/** Asks which sheets are to be written, with the figures of which condition, in which form. */
final class ExportForm {
    private final JPanel page = Forms.page();
    private final JComboBox<SheetExport.Form> form;
    private final JComboBox<String> condition = new JComboBox<>();
    private final List<String> conditions = new ArrayList<>();
    private final Map<String, JCheckBox> sheets = new LinkedHashMap<>();

    ExportForm(SessionState s) {
        form = Forms.line(page, "editor.form.form", new JComboBox<>(SheetExport.Form.values()));
        for (OperatingCondition c : s.drawing().conditions().values()) {
            add(c.id(), c.title());
        }
        add(Results.GOVERNING, Texts.of("editor.governing"));
        condition.setSelectedIndex(Math.max(0, conditions.indexOf(s.condition())));
        Forms.line(page, "editor.form.figures", condition);
        page.add(Flat.bold(Texts.of("editor.form.sheets"), Look::text));
        for (Sheet sheet : s.drawing().sheets().values()) {
            JCheckBox box = new JCheckBox(SheetStrip.number(s.drawing(), sheet) + "   " + sheet.title(), true);
            box.setOpaque(false);
            box.setName("form.sheet." + sheet.id());
            sheets.put(sheet.id(), box);
            page.add(box);
        }
        page.add(new WrapText(Texts.of("editor.form.export.how"), Look::quiet, Look::small));
    }

    private void add(String id, String title) {
        conditions.add(id);
        condition.addItem(title);
    }

    JPanel panel() {
        return page;
    }

    SheetExport export() {
        List<String> chosen = new ArrayList<>();
        sheets.forEach((id, box) -> {
            if (box.isSelected()) {
                chosen.add(id);
            }
        });
        Object f = form.getSelectedItem();
        return new SheetExport(
                chosen,
                conditions.get(Math.max(0, condition.getSelectedIndex())),
                Preferences.onSheets(Annotations.ALL),
                f instanceof SheetExport.Form is ? is : SheetExport.Form.PDF);
    }
}

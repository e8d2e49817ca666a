package orlop.editor;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import orlop.desk.RecordParts;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Sheet;
import orlop.drawing.Vessel;

/** Asks for what a new drawing begins with: name, rule set, electrical systems. */
final class NewDrawingForm {
    /** The rule sets by their ids in the file; the first stands for none chosen yet. */
    static final List<String> RULE_SETS = List.of("", "iso13297", "abyc", "iec60364", "iec60092");

    private final JPanel page = Forms.page();
    private final JTextField name;
    private final JComboBox<String> rules;
    private final Map<JCheckBox, ElectricalSystem> systems = new LinkedHashMap<>();

    /** @param ruleSet offered at first */
    NewDrawingForm(String ruleSet) {
        name = Forms.line(page, "editor.form.vessel", new JTextField(Texts.of("editor.new.vessel")));
        Forms.beginAt(name);
        rules = Forms.line(page, "editor.form.rules", ruleBox(ruleSet));
        page.add(new WrapText(Texts.of("editor.form.rules.why"), Look::quiet, Look::small));
        page.add(Flat.label(Texts.of("editor.form.systems"), Look::text, false));
        add(ElectricalSystem.of("12", Nature.DC, 12), true);
        add(ElectricalSystem.of("24", Nature.DC, 24), false);
        add(ElectricalSystem.of("230", Nature.AC1, 230), false);
        add(ElectricalSystem.of("400", Nature.AC3N, 400), false);
        add(ElectricalSystem.of("PV", Nature.PV, 40), false);
    }

    static JComboBox<String> ruleBox(String chosen) {
        JComboBox<String> box = new JComboBox<>();
        RULE_SETS.forEach(id -> box.addItem(Texts.of("editor.rules." + (id.isEmpty() ? "none" : id))));
        box.setSelectedIndex(Math.max(0, RULE_SETS.indexOf(chosen)));
        return box;
    }

    private void add(ElectricalSystem s, boolean on) {
        JCheckBox box = new JCheckBox(Texts.of("editor.system." + s.id()), on);
        box.setOpaque(false);
        box.setName("form.system." + s.id());
        systems.put(box, s);
        page.add(box);
    }

    JPanel panel() {
        return page;
    }

    Drawing drawing() {
        String typed = name.getText().strip();
        Drawing d = Drawing.empty(typed.isEmpty() ? Texts.of("editor.new.vessel") : typed);
        Vessel v = RecordParts.with(d.vessel(), "ruleSet", RULE_SETS.get(Math.max(0, rules.getSelectedIndex())));
        d = d.withVessel(v).with(Sheet.of("1", Texts.of("editor.new.sheet")));
        d = d.with(OperatingCondition.asDrawn("c1", Texts.of("editor.new.condition")));
        boolean any = systems.keySet().stream().anyMatch(JCheckBox::isSelected);
        for (Map.Entry<JCheckBox, ElectricalSystem> e : systems.entrySet()) {
            if (e.getKey().isSelected() || (!any && e.getValue().id().equals("12"))) {
                d = d.with(e.getValue());
            }
        }
        return d;
    }
}

package orlop.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.jspecify.annotations.Nullable;
import orlop.desk.Measure;
import orlop.desk.NumberInput;
import orlop.desk.SystemEdits;
import orlop.drawing.Drawing;
import orlop.drawing.Earthing;
import orlop.drawing.Edit;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Extras;
import orlop.drawing.Message;
import orlop.drawing.Nature;

/** The electrical systems of a drawing: one of them is changed or taken away, or a new one added. */
final class SystemForm {
    private static final List<Nature> NATURES = List.of(Nature.values());

    private final Drawing drawing;
    private final List<ElectricalSystem> systems;
    private final JPanel page = Forms.page();
    private final JComboBox<String> which = new JComboBox<>();
    private final JTextField id = new JTextField();
    private final JTextField name = new JTextField();
    private final JComboBox<String> nature = new JComboBox<>();
    private final JTextField nominal = new JTextField();
    private final JTextField highest = new JTextField();
    private final JTextField frequency = new JTextField();
    private final JComboBox<String> earthing = new JComboBox<>();
    private final JTextField vital = new JTextField();
    private final JTextField other = new JTextField();
    private final JCheckBox away = new JCheckBox(Texts.of("editor.form.system.away"));

    SystemForm(Drawing drawing) {
        this.drawing = drawing;
        this.systems = new ArrayList<>(drawing.systems().stream().toList());
        for (ElectricalSystem s : systems) {
            String words = Texts.of("editor.nature." + s.nature().word());
            which.addItem(Texts.of("editor.form.system.there", s.id(), words));
        }
        which.addItem(Texts.of("editor.form.system.new"));
        NATURES.forEach(n -> nature.addItem(Texts.of("editor.nature." + n.word())));
        Forms.line(page, "editor.form.system.which", which);
        Forms.line(page, "editor.form.system", id);
        Forms.line(page, "editor.form.system.name", name);
        Forms.line(page, "editor.form.nature", nature);
        Forms.line(page, "editor.form.volts", nominal);
        Forms.line(page, "editor.form.highest", highest);
        Forms.line(page, "editor.form.frequency", frequency);
        Forms.line(page, "editor.form.earthing", earthing);
        Forms.line(page, "editor.form.vital", vital);
        Forms.line(page, "editor.form.other", other);
        page.add(new WrapText(Texts.of("editor.form.system.why"), Look::quiet, Look::small));
        away.setName("form.away");
        away.setOpaque(false);
        page.add(away);
        which.addActionListener(e -> fill());
        nature.addActionListener(e -> byNature());
        fill();
        Forms.beginAt(which);
    }

    JPanel panel() {
        return page;
    }

    /** The one that is chosen; empty for a new one. */
    private Optional<ElectricalSystem> chosen() {
        int i = which.getSelectedIndex();
        return i >= 0 && i < systems.size() ? Optional.of(systems.get(i)) : Optional.empty();
    }

    private void fill() {
        Optional<ElectricalSystem> s = chosen();
        boolean used = s.flatMap(x -> SystemEdits.user(drawing, x.id())).isPresent();
        id.setText(s.map(ElectricalSystem::id).orElse(""));
        id.setEnabled(s.isEmpty());
        name.setText(s.map(ElectricalSystem::name).orElse(""));
        nature.setSelectedIndex(s.map(x -> NATURES.indexOf(x.nature())).orElse(0));
        nature.setEnabled(!used);
        nominal.setText(
                s.map(x -> NumberInput.typed(x.nominalV(), Measure.VOLT)).orElse(""));
        highest.setText(
                s.map(x -> NumberInput.typed(x.highestV(), Measure.VOLT)).orElse(""));
        frequency.setText(s.filter(x -> !x.nature().isDc())
                .map(x -> NumberInput.typed(x.frequencyHz(), Measure.HERTZ))
                .orElse(""));
        vital.setText(percent(s.map(ElectricalSystem::vitalDropPercent).orElse(null)));
        other.setText(percent(s.map(ElectricalSystem::otherDropPercent).orElse(null)));
        away.setSelected(false);
        away.setEnabled(s.isPresent() && !used);
        byNature();
        earthing.setSelectedIndex(Math.max(
                0, earthings().indexOf(s.map(ElectricalSystem::earthing).orElse(Earthing.UNKNOWN))));
    }

    private static String percent(@Nullable Double v) {
        return v == null ? "" : NumberInput.typed(v, Measure.PERCENT);
    }

    private Nature nature() {
        return NATURES.get(Math.max(0, nature.getSelectedIndex()));
    }

    private List<Earthing> earthings() {
        return SystemEdits.earthings(nature());
    }

    /** Direct current has no frequency, and each nature its own ways of being earthed. */
    private void byNature() {
        frequency.setEnabled(!nature().isDc());
        int was = Math.max(0, earthing.getSelectedIndex());
        earthing.removeAllItems();
        earthings().forEach(e -> earthing.addItem(Texts.of("editor.choice.earthing." + e.word())));
        earthing.setSelectedIndex(Math.min(was, earthing.getItemCount() - 1));
    }

    /** What was typed, as an edit; empty where a new system was begun with nothing and nothing is to be done. */
    Optional<Edit> edit() {
        Optional<ElectricalSystem> s = chosen();
        if (s.isEmpty() && id.getText().isBlank()) {
            return Optional.empty();
        }
        if (away.isSelected() && s.isPresent()) {
            return Optional.of(SystemEdits.remove(s.get().id()));
        }
        ElectricalSystem typed = typed(s);
        return Optional.of(s.isEmpty() ? SystemEdits.add(typed) : SystemEdits.change(typed));
    }

    private ElectricalSystem typed(Optional<ElectricalSystem> was) {
        double volts = number(nominal, Measure.VOLT, null);
        double most = number(highest, Measure.VOLT, ElectricalSystem.defaultHighestV(nature(), volts));
        double hz = nature().isDc() ? 0 : number(frequency, Measure.HERTZ, 50.0);
        return new ElectricalSystem(
                id.getText().strip(),
                name.getText().strip(),
                nature(),
                volts,
                most,
                hz,
                earthings().get(Math.max(0, earthing.getSelectedIndex())),
                unless(vital),
                unless(other),
                was.map(ElectricalSystem::extras).orElse(Extras.NONE));
    }

    private static @Nullable Double unless(JTextField f) {
        return f.getText().isBlank() ? null : number(f, Measure.PERCENT, null);
    }

    /** @param otherwise what an empty field means; null if it must not be empty */
    private static double number(JTextField f, Measure m, @Nullable Double otherwise) {
        NumberInput.Reading r = NumberInput.read(f.getText(), m);
        if (r instanceof NumberInput.Value v) {
            return v.value();
        }
        if (r instanceof NumberInput.Refused no) {
            throw new Edit.Refusal(no.reason());
        }
        if (otherwise == null) {
            throw new Edit.Refusal(
                    Message.of("editor.form.needed", f.getAccessibleContext().getAccessibleName()));
        }
        return otherwise;
    }
}

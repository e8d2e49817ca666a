package orlop.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import orlop.desk.Measure;
import orlop.desk.NumberInput;
import orlop.desk.RecordParts;
import orlop.desk.Session;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Message;
import orlop.drawing.Nature;
import orlop.drawing.Sheet;
import orlop.drawing.SheetSize;
import orlop.drawing.Vessel;
import orlop.findings.Cure;

/** The commands of the menu Vessel: particulars, systems, conditions, sheets. */
final class VesselCommands {
    private final Session session;
    private final Prompts prompts;

    VesselCommands(Session session, Prompts prompts) {
        this.session = session;
        this.prompts = prompts;
    }

    void addTo(Commands c) {
        c.add(CommandId.VESSEL, () -> vessel(""));
        c.add(CommandId.SYSTEMS, this::systems);
        c.add(
                CommandId.SHEET_DETAILS,
                () -> session.state().shownSheet().ifPresent(this::sheet),
                () -> session.state().shownSheet().isPresent());
    }

    private Drawing drawing() {
        return session.state().drawing();
    }

    /** @param field in which the typing begins; "" for the first */
    void vessel(String field) {
        Vessel v = drawing().vessel();
        JPanel page = Forms.page();
        JTextField name = Forms.line(page, "editor.form.vessel", new JTextField(v.name()));
        JTextField prefix = Forms.line(page, "editor.form.prefix", new JTextField(v.documentPrefix()));
        JComboBox<String> rules = Forms.line(page, "editor.form.rules", NewDrawingForm.ruleBox(v.ruleSet()));
        page.add(new WrapText(Texts.of("editor.form.rules.why"), Look::quiet, Look::small));
        JTextField ambient = Forms.line(page, "editor.form.ambient", number(v.ambientC(), Measure.CELSIUS));
        JTextField engine = Forms.line(page, "editor.form.engine", number(v.engineSpaceC(), Measure.CELSIUS));
        JTextField owner = Forms.line(page, "editor.form.owner", new JTextField(v.owner()));
        if (field.equals(Cure.RULE_SET)) {
            Forms.beginAt(rules);
        }
        form(Texts.of("editor.form.vessel.title"), page, Message.of("drawing.edit.vessel"), d -> {
            Vessel w = RecordParts.with(v, "name", name.getText().strip());
            w = RecordParts.with(w, "documentPrefix", prefix.getText().strip());
            w = RecordParts.with(w, "ruleSet", NewDrawingForm.RULE_SETS.get(rules.getSelectedIndex()));
            w = RecordParts.with(w, "ambientC", read(ambient, Measure.CELSIUS));
            w = RecordParts.with(w, "engineSpaceC", read(engine, Measure.CELSIUS));
            return d.withVessel(RecordParts.with(w, "owner", owner.getText().strip()));
        });
    }

    private static JTextField number(double value, Measure m) {
        return new JTextField(NumberInput.typed(value, m));
    }

    private static double read(JTextField field, Measure m) {
        NumberInput.Reading r = NumberInput.read(field.getText(), m);
        if (r instanceof NumberInput.Value v) {
            return v.value();
        }
        throw new Edit.Refusal(r instanceof NumberInput.Refused f ? f.reason() : Message.of("editor.needed"));
    }

    /** Makes the edit when the form is agreed to; a refusal leaves it open, with all that was typed. */
    private void form(String title, JPanel page, Message label, UnaryOperator<Drawing> change) {
        prompts.form(title, page, () -> session.apply(Edit.of(label, change)));
    }

    private void systems() {
        JPanel page = Forms.page();
        List<String> there = new ArrayList<>();
        for (ElectricalSystem s : drawing().systems().values()) {
            there.add(Texts.of(
                    "editor.form.system.there",
                    s.id(),
                    Texts.of("editor.nature." + s.nature().word())));
        }
        page.add(new WrapText(String.join("\n", there), Look::text, Look::font));
        JTextField id = Forms.line(page, "editor.form.system", new JTextField());
        JComboBox<String> nature = new JComboBox<>();
        for (Nature n : Nature.values()) {
            nature.addItem(Texts.of("editor.nature." + n.word()));
        }
        Forms.line(page, "editor.form.nature", nature);
        JTextField volts = Forms.line(page, "editor.form.volts", new JTextField());
        UnaryOperator<Drawing> added = d -> {
            String name = id.getText().strip();
            if (d.systems().contains(name)) {
                throw new Edit.Refusal(Message.of("drawing.refuse.tag-taken", name));
            }
            double v = read(volts, Measure.VOLT);
            return d.with(ElectricalSystem.of(name, List.of(Nature.values()).get(nature.getSelectedIndex()), v));
        };
        prompts.form(
                Texts.of("editor.form.systems.title"),
                page,
                () -> id.getText().isBlank()
                        ? Optional.empty()
                        : session.apply(Edit.of(
                                Message.of("editor.edit.system", id.getText().strip()), added)));
    }

    private void sheet(Sheet s) {
        JPanel page = Forms.page();
        JTextField number = Forms.line(page, "editor.form.number", new JTextField(s.number()));
        JTextField title = Forms.line(page, "editor.form.title", new JTextField(s.title()));
        JTextField revision = Forms.line(page, "editor.form.revision", new JTextField(s.revision()));
        JTextField status = Forms.line(page, "editor.form.status", new JTextField(s.status()));
        JTextField drawnBy = Forms.line(page, "editor.form.drawn-by", new JTextField(s.drawnBy()));
        JTextField approvedBy = Forms.line(page, "editor.form.approved-by", new JTextField(s.approvedBy()));
        JTextField date = Forms.line(page, "editor.form.date", new JTextField(s.date()));
        JComboBox<SheetSize> size = Forms.line(page, "editor.form.size", new JComboBox<>(SheetSize.values()));
        size.setSelectedItem(s.size());
        form(
                Texts.of("editor.form.sheet.title"),
                page,
                Message.of("editor.edit.sheet", s.id()),
                d -> d.with(new Sheet(
                        s.id(),
                        number.getText().strip(),
                        title.getText().strip(),
                        (SheetSize) Objects.requireNonNull(size.getSelectedItem()),
                        revision.getText().strip(),
                        status.getText().strip(),
                        drawnBy.getText().strip(),
                        approvedBy.getText().strip(),
                        date.getText().strip(),
                        s.extras())));
    }
}

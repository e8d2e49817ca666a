package orlop.editor;

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
import orlop.drawing.Checks;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Message;
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
        SystemForm form = new SystemForm(drawing());
        prompts.form(Texts.of("editor.form.systems.title"), form.panel(), () -> taken(form));
    }

    private Optional<Message> taken(SystemForm form) {
        try {
            return form.edit().flatMap(session::apply);
        } catch (Edit.Refusal e) {
            return Optional.of(e.reason());
        } catch (Checks.OutOfRange e) {
            return Optional.of(FieldRow.spoken(e.reason()));
        }
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

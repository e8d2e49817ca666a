package orlop.editor;

import java.awt.Component;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.jspecify.annotations.Nullable;

/** The boxes of a window. */
final class SwingPrompts implements Prompts {
    /** What the sign of a question takes of the width. */
    private static final int ICON = 60;

    private final Component owner;
    private @Nullable File folder;

    SwingPrompts(Component owner) {
        this.owner = owner;
    }

    private JFileChooser chooser(String suffix) {
        JFileChooser c = new JFileChooser(folder) {
            private static final long serialVersionUID = 1L;

            @Override
            protected JDialog createDialog(Component parent) {
                JDialog box = super.createDialog(parent);
                Screens.keepWithin(box);
                return box;
            }
        };
        c.setName("files");
        String extension = suffix.substring(1);
        c.setFileFilter(
                new FileNameExtensionFilter(Texts.of("editor.files." + extension.toLowerCase(Locale.ROOT)), extension));
        return c;
    }

    @Override
    public Optional<Path> open(Optional<Path> near) {
        if (folder == null) {
            folder = near.map(p -> p.toFile().getAbsoluteFile().getParentFile()).orElse(null);
        }
        JFileChooser c = chooser(".orlop");
        boolean yes = c.showOpenDialog(owner) == JFileChooser.APPROVE_OPTION;
        return yes ? Optional.of(kept(c.getSelectedFile())) : Optional.empty();
    }

    private Path kept(File file) {
        folder = file.getParentFile();
        return file.toPath();
    }

    @Override
    public Optional<Path> save(Path suggestion, String suffix) {
        JFileChooser c = chooser(suffix);
        File suggested = suggestion.toFile();
        c.setSelectedFile(
                suggestion.getParent() == null && folder != null ? new File(folder, suggested.getName()) : suggested);
        while (c.showSaveDialog(owner) == JFileChooser.APPROVE_OPTION) {
            Path p = kept(c.getSelectedFile());
            String name = String.valueOf(p.getFileName());
            Path file = name.toLowerCase(Locale.ROOT).endsWith(suffix) ? p : p.resolveSibling(name + suffix);
            if (!Files.exists(file) || replace(file)) {
                return Optional.of(file);
            }
        }
        return Optional.empty();
    }

    private boolean replace(Path file) {
        String[] answers = {Texts.of("editor.ask.replace.yes"), Texts.of("editor.ask.cancel")};
        return ask(
                        1, // Enter alone overwrites nothing
                        Texts.of("editor.ask.replace.title"),
                        Texts.of("editor.ask.replace", String.valueOf(file.getFileName())),
                        answers)
                == 0;
    }

    private int ask(String title, String text, String... answers) {
        return ask(0, title, text, answers);
    }

    /** @param first the answer that Enter gives */
    private int ask(int first, String title, String text, String... answers) {
        JOptionPane box = new JOptionPane(
                Forms.fitting(Forms.said(text, ICON)),
                JOptionPane.QUESTION_MESSAGE,
                JOptionPane.DEFAULT_OPTION,
                null,
                answers,
                answers[first]);
        return List.of(answers).indexOf(shown(box, title));
    }

    /** Shows a box until it is answered or backed out of; then the keys are again where they were. */
    private Object shown(JOptionPane box, String title) {
        AnswerKeys.give(box);
        JDialog dialog = box.createDialog(owner, title);
        box.selectInitialValue(); // before it is shown, or the button takes the keys from the field in which a
        // form begins
        dialog.setVisible(true);
        dialog.dispose();
        Object answer = box.getValue();
        return answer == null ? JOptionPane.CLOSED_OPTION : answer;
    }

    @Override
    public Unsaved unsaved(String name) {
        int answer = ask(
                Texts.of("editor.ask.save.title"),
                Texts.of("editor.ask.save", name),
                Texts.of("editor.ask.save.yes"),
                Texts.of("editor.ask.save.no"),
                Texts.of("editor.ask.cancel"));
        return answer == 0 ? Unsaved.SAVE : answer == 1 ? Unsaved.DISCARD : Unsaved.STAY;
    }

    @Override
    public Outside changedOutside(String name) {
        int answer = ask(
                Texts.of("editor.ask.outside.title"),
                Texts.of("editor.ask.outside.save", name),
                Texts.of("editor.ask.outside.other-name"),
                Texts.of("editor.ask.outside.overwrite"),
                Texts.of("editor.ask.cancel"));
        return answer == 0 ? Outside.SAVE_AS : answer == 1 ? Outside.OVERWRITE : Outside.STAY;
    }

    @Override
    public boolean readAgain(String name, boolean dirty) {
        return ask(
                        dirty ? 1 : 0, // what is not saved is not lost by a key that was meant for something else
                        Texts.of("editor.ask.outside.title"),
                        Texts.of(dirty ? "editor.ask.outside.dirty" : "editor.ask.outside.clean", name),
                        Texts.of("editor.ask.outside.read"),
                        Texts.of("editor.ask.outside.keep"))
                == 0;
    }

    @Override
    public boolean openAsCopy(String name) {
        return ask(
                        Texts.of("editor.ask.in-use.title"),
                        Texts.of("editor.ask.in-use", name),
                        Texts.of("editor.ask.in-use.copy"),
                        Texts.of("editor.ask.cancel"))
                == 0;
    }

    @Override
    public Recovery recover(String name, String when, String newer) {
        int answer = ask(
                newer.isEmpty() ? 0 : 1,
                Texts.of("editor.ask.recover.title"),
                (Texts.of("editor.ask.recover", name, when) + " " + newer).strip(),
                Texts.of("editor.ask.recover.yes"),
                Texts.of("editor.ask.recover.later"),
                Texts.of("editor.ask.recover.no"));
        return answer == 0 ? Recovery.RESTORE : answer == 2 ? Recovery.DISCARD : Recovery.LATER;
    }

    @Override
    public Optional<String> line(String title, String label, String initial) {
        JPanel page = Forms.page();
        page.add(new WrapText(label, Look::text, Look::font));
        JTextField field = new JTextField(initial);
        field.setName("line");
        field.getAccessibleContext().setAccessibleName(label);
        field.selectAll(); // what is typed takes the place of what is offered
        page.add(field);
        return form(title, page) ? Optional.of(field.getText().strip()) : Optional.empty();
    }

    @Override
    public int choose(String title, String text, String... answers) {
        return ask(title, text, answers);
    }

    @Override
    public boolean form(String title, JComponent form) {
        Forms.begin(form);
        JOptionPane box = new JOptionPane(Forms.fitting(form), JOptionPane.PLAIN_MESSAGE, JOptionPane.OK_CANCEL_OPTION);
        return shown(box, title).equals(JOptionPane.OK_OPTION);
    }

    @Override
    public void tell(String title, String text) {
        JPanel page = Forms.said(text, 0);
        page.getComponent(0).setFocusable(true); // so that it can be copied
        tell(title, Forms.fitting(page));
    }

    @Override
    public void tell(String title, JComponent content) {
        shown(new JOptionPane(content, JOptionPane.PLAIN_MESSAGE), title);
    }
}

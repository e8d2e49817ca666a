package orlop.editor;

import java.awt.BorderLayout;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTree;
import javax.swing.ToolTipManager;
import javax.swing.TransferHandler;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.DefaultTreeModel;
import javax.swing.tree.TreePath;
import javax.swing.tree.TreeSelectionModel;
import org.jspecify.annotations.Nullable;
import orlop.desk.Same;
import orlop.desk.Session;
import orlop.desk.SessionListener;
import orlop.desk.SessionState;
import orlop.desk.WorkingLines;
import orlop.drawing.Words;
import orlop.study.Workings;
import orlop.study.working.Figure;
import orlop.study.working.Working;

/** How the figures of the selected item came about, as a tree: each formula with what went into it. */
final class WorkingView implements SessionListener {
    /** A working as a node; its text is what a screen reader says. */
    private record Entry(String sum, String says) {
        @Override
        public String toString() {
            return sum + "   " + says;
        }
    }

    private final Session session;
    private final BooleanSupplier open;
    private final WorkingLines lines = new WorkingLines(Words.english());
    private final JPanel panel = Flat.panel(new BorderLayout(), Look::card);
    private final JLabel title = Flat.bold("", Look::text);
    private final DefaultTreeModel model = new DefaultTreeModel(new DefaultMutableTreeNode());
    private final JTree tree = new JTree(model);
    private final Set<Figure> opened = EnumSet.noneOf(Figure.class);
    private Map<Figure, Workings.Shown> shown = Map.of();
    private String item = "";
    private @Nullable Figure wanted;
    private boolean asked;

    /** @param open whether it is in sight */
    WorkingView(Session session, BooleanSupplier open) {
        this.session = session;
        this.open = open;
        tree.setName("working");
        tree.setRootVisible(false);
        tree.setShowsRootHandles(true);
        tree.setRowHeight(Look.px(22));
        tree.setCellRenderer(new WorkingCell());
        tree.getSelectionModel().setSelectionMode(TreeSelectionModel.SINGLE_TREE_SELECTION);
        tree.getAccessibleContext().setAccessibleName(Texts.of("editor.tab.working"));
        ToolTipManager.sharedInstance().registerComponent(tree);
        tree.setTransferHandler(new Copies());
        title.setBorder(Flat.rim(4, 14, 4, 8));
        title.setName("working.title");
        JScrollPane scroll = new JScrollPane(tree);
        scroll.setBorder(BorderFactory.createEmptyBorder(0, Look.px(8), 0, 0));
        panel.add(title, BorderLayout.NORTH);
        panel.add(scroll, BorderLayout.CENTER);
        session.listen(this);
        look(session.state());
    }

    JPanel panel() {
        return panel;
    }

    /** The key for copying takes all of it, as text. */
    private final class Copies extends TransferHandler {
        private static final long serialVersionUID = 1L;

        @Override
        public int getSourceActions(JComponent c) {
            return COPY;
        }

        @Override
        protected Transferable createTransferable(JComponent c) {
            return new StringSelection(text());
        }
    }

    /** All of it as indented text. */
    String text() {
        return shown.isEmpty() ? title.getText() : title.getText() + "\n" + lines.text(shown);
    }

    /** Opens the working of one figure as soon as it is there. */
    void open(Figure figure) {
        wanted = figure;
        asked = false;
        look();
    }

    /** Asks for what is to be shown, if that has not been done. */
    void look() {
        look(session.state());
    }

    @Override
    public void changed(SessionState before, SessionState after) {
        if (!Same.object(before.review(), after.review())
                || !before.selection().equals(after.selection())
                || !before.condition().equals(after.condition())) {
            asked = false;
            look(after);
        }
    }

    private void look(SessionState s) {
        Optional<String> sole = s.soleSelection().filter(id -> has(s, id));
        if (sole.isEmpty()) {
            session.explainer().cancel();
            item = "";
            fill(Map.of());
        } else if (!asked && open.getAsBoolean() && s.review() != null) {
            asked = true;
            String id = sole.get();
            if (!id.equals(item)) {
                title.setText(Texts.of("editor.working.asked", id));
            }
            session.explainer().ask(s.review().study().drawing(), s.condition(), id, found -> {
                item = id;
                fill(found);
            });
        }
    }

    private static boolean has(SessionState s, String id) {
        return s.drawing().cables().contains(id) || s.drawing().components().contains(id);
    }

    private void fill(Map<Figure, Workings.Shown> found) {
        shown = found;
        remember();
        String words = item.isEmpty()
                ? "editor.working.none"
                : found.isEmpty() ? "editor.working.nothing" : "editor.working.of";
        title.setText(item.isEmpty() ? Texts.of(words) : Texts.of(words, item));
        DefaultMutableTreeNode root = new DefaultMutableTreeNode();
        found.forEach((figure, s) -> {
            for (Working w : s.of()) {
                DefaultMutableTreeNode node = node(w);
                Entry plain = (Entry) node.getUserObject();
                node.setUserObject(new Root(figure, plain.sum(), plain.says() + ", " + lines.condition(s.condition())));
                root.add(node);
            }
        });
        model.setRoot(root);
        show(root);
    }

    /** A working that stands by itself. */
    private record Root(Figure figure, String sum, String says) {
        @Override
        public String toString() {
            return sum + "   " + says;
        }
    }

    private DefaultMutableTreeNode node(Working w) {
        DefaultMutableTreeNode node = new DefaultMutableTreeNode(new Entry(lines.sum(w), lines.says(w)));
        w.inputs().forEach(i -> node.add(node(i)));
        return node;
    }

    /** Which figures were open, so that they stay so while a number is typed. */
    private void remember() {
        DefaultMutableTreeNode root = (DefaultMutableTreeNode) model.getRoot();
        for (int i = 0; i < root.getChildCount(); i++) {
            DefaultMutableTreeNode node = (DefaultMutableTreeNode) root.getChildAt(i);
            if (node.getUserObject() instanceof Root r) {
                boolean open = tree.isExpanded(new TreePath(node.getPath()));
                if (open) {
                    opened.add(r.figure());
                } else {
                    opened.remove(r.figure());
                }
            }
        }
    }

    private void show(DefaultMutableTreeNode root) {
        for (int i = 0; i < root.getChildCount(); i++) {
            DefaultMutableTreeNode node = (DefaultMutableTreeNode) root.getChildAt(i);
            Root r = (Root) node.getUserObject();
            TreePath path = new TreePath(node.getPath());
            if (opened.contains(r.figure()) || r.figure() == wanted) {
                tree.expandPath(path);
            }
            if (r.figure() == wanted) {
                wanted = null;
                for (int k = 0; k < node.getChildCount(); k++) {
                    tree.expandPath(path.pathByAddingChild(node.getChildAt(k)));
                }
                tree.setSelectionPath(path);
                int row = tree.getRowForPath(path);
                tree.scrollRowToVisible(tree.getRowCount() - 1); // so that what is wanted comes to stand at the top
                tree.scrollRowToVisible(row);
            }
        }
    }
}

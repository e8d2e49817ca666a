package orlop.editor;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import orlop.drawing.Drawing;
import orlop.store.DrawingFile;

class RehearsalTest {
    private static final int LONG = 60;

    @Test
    void it_goes_through_an_edit_as_often_as_it_is_told_to_and_leaves_the_drawing_alone() {
        Drawing d = GrownBoat.of(20);
        byte[] before = DrawingFile.write(d);
        Rehearsal rehearsal = new Rehearsal(d, 3, LONG);
        rehearsal.run();
        assertEquals(3, rehearsal.done());
        assertArrayEquals(before, DrawingFile.write(d));
    }

    @Test
    void it_ends_when_its_time_is_over() {
        Rehearsal rehearsal = new Rehearsal(GrownBoat.of(20), Integer.MAX_VALUE, 0);
        rehearsal.run();
        assertEquals(0, rehearsal.done());
    }

    @Test
    void it_leaves_large_and_empty_drawings_alone() {
        for (Drawing d : new Drawing[] {GrownBoat.of(400), Drawing.empty("Nameless")}) {
            Rehearsal rehearsal = new Rehearsal(d, 3, LONG);
            rehearsal.run();
            assertEquals(0, rehearsal.done());
        }
    }
}

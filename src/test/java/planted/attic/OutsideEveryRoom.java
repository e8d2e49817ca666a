package planted.attic;

/** A planted violation. */
public final class OutsideEveryRoom {
    private OutsideEveryRoom() {}
}

package orlop.cli;

import java.io.DataInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/** Answers the first byte of an X connection, on a port of the X range. */
final class FakeXServer implements AutoCloseable {
    private static final int SILENT = -1;
    private static final int FIRST_PORT = 6000;

    private final ServerSocket socket;
    private final int answer;
    private final byte @Nullable [] wantedKey;
    private final AtomicInteger visitors = new AtomicInteger();

    private FakeXServer(int answer, byte @Nullable [] wantedKey) throws IOException {
        this.answer = answer;
        this.wantedKey = wantedKey;
        this.socket = listen();
        Thread thread = new Thread(this::serve, "fake X server");
        thread.setDaemon(true);
        thread.start();
    }

    static FakeXServer welcoming() throws IOException {
        return new FakeXServer(1, null);
    }

    static FakeXServer wanting(byte[] key) throws IOException {
        return new FakeXServer(1, key);
    }

    static FakeXServer answering(int firstByte) throws IOException {
        return new FakeXServer(firstByte, null);
    }

    static FakeXServer silent() throws IOException {
        return new FakeXServer(SILENT, null);
    }

    int number() {
        return socket.getLocalPort() - FIRST_PORT;
    }

    String name() {
        return "127.0.0.1:" + number() + ".0";
    }

    int visitors() {
        return visitors.get();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }

    private static ServerSocket listen() throws IOException {
        IOException last = new IOException("no port tried");
        for (int number = 900; number < 980; number++) {
            try {
                return new ServerSocket(FIRST_PORT + number, 5, InetAddress.getLoopbackAddress());
            } catch (IOException e) {
                last = e; // taken: try the next one
            }
        }
        throw last;
    }

    private void serve() {
        while (!socket.isClosed()) {
            try (Socket visitor = socket.accept()) {
                visitors.incrementAndGet();
                greet(visitor);
            } catch (IOException e) {
                // The visitor hung up, or the test is over.
            }
        }
    }

    private void greet(Socket visitor) throws IOException {
        DataInputStream in = new DataInputStream(visitor.getInputStream());
        byte[] head = in.readNBytes(12);
        int protocolLength = head[6];
        int keyLength = head[8];
        in.readNBytes((protocolLength + 3) / 4 * 4);
        byte[] key = in.readNBytes(keyLength);
        if (answer == SILENT) {
            in.read(); // until the visitor gives up
        } else {
            visitor.getOutputStream().write(wantedKey == null || Arrays.equals(wantedKey, key) ? answer : 0);
        }
    }
}

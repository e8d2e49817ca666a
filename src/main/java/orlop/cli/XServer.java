package orlop.cli;

import java.io.IOException;
import java.net.SocketAddress;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/**
 * A place where an X server may listen.
 *
 * @param address looked up only when knocking, since looking up a host may hang
 */
record XServer(Supplier<SocketAddress> address) {

    enum Answer {
        /** The server would take us as a client. */
        ACCEPTED,
        /** A server is there, but wants to know who we are. */
        REFUSED,
        /** Nobody there, or nobody who speaks X. */
        SILENT
    }

    private static final String COOKIE_PROTOCOL = "MIT-MAGIC-COOKIE-1";

    /**
     * Begins a connection and hangs up.
     *
     * @param cookie the key to show, empty for none
     * @param limit of the whole exchange; {@code SILENT} when it has passed
     */
    Answer knock(byte[] cookie, Duration limit) {
        FutureTask<Answer> exchange = new FutureTask<>(() -> exchange(cookie));
        Thread thread = new Thread(exchange, "display probe");
        thread.setDaemon(true);
        thread.start();
        try {
            return exchange.get(limit.toMillis(), TimeUnit.MILLISECONDS);
        } catch (ExecutionException e) {
            return Answer.SILENT; // refused, no such host, no such socket: all the same to us
        } catch (TimeoutException e) {
            exchange.cancel(true);
            return Answer.SILENT;
        } catch (InterruptedException e) {
            exchange.cancel(true);
            Thread.currentThread().interrupt();
            return Answer.SILENT;
        }
    }

    private Answer exchange(byte[] cookie) throws IOException {
        try (SocketChannel channel = SocketChannel.open(address.get())) {
            ByteBuffer request = setupRequest(cookie);
            while (request.hasRemaining()) {
                channel.write(request);
            }
            ByteBuffer status = ByteBuffer.allocate(1);
            if (channel.read(status) < 1) {
                return Answer.SILENT;
            }
            return switch (status.get(0)) {
                case 0, 2 -> Answer.REFUSED; // Failed, Authenticate
                case 1 -> Answer.ACCEPTED; // Success
                default -> Answer.SILENT;
            };
        }
    }

    /** X Window System Protocol, X Version 11, chapter 8 "Connection Setup". */
    private static ByteBuffer setupRequest(byte[] cookie) {
        byte[] protocol = cookie.length == 0 ? new byte[0] : COOKIE_PROTOCOL.getBytes(StandardCharsets.US_ASCII);
        ByteBuffer request = ByteBuffer.allocate(12 + padded(protocol.length) + padded(cookie.length));
        request.order(ByteOrder.LITTLE_ENDIAN);
        request.put((byte) 'l').put((byte) 0);
        request.putShort((short) 11).putShort((short) 0);
        request.putShort((short) protocol.length).putShort((short) cookie.length);
        request.putShort((short) 0);
        request.put(12, protocol);
        request.put(12 + padded(protocol.length), cookie);
        return request.rewind();
    }

    private static int padded(int length) {
        return (length + 3) / 4 * 4;
    }
}

package org.ripewood;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** A proxy that gives each connection to the next of several services, and remembers nobody. */
final class RoundRobin implements AutoCloseable {

    private final ServerSocket listener;
    private final ExecutorService pumps = Executors.newCachedThreadPool();
    private final List<Integer> ports;
    private int next;

    private RoundRobin(ServerSocket listener, List<Integer> ports) {
        this.listener = listener;
        this.ports = List.copyOf(ports);
    }

    static RoundRobin before(List<Integer> ports) throws IOException {
        var proxy =
                new RoundRobin(new ServerSocket(0, 50, InetAddress.getLoopbackAddress()), ports);
        proxy.pumps.execute(proxy::accept);
        return proxy;
    }

    int port() {
        return listener.getLocalPort();
    }

    private void accept() {
        try {
            while (true) {
                var in = listener.accept();
                var out = new Socket(InetAddress.getLoopbackAddress(), ports.get(next));
                next = (next + 1) % ports.size();
                pumps.execute(() -> pump(in, out));
                pumps.execute(() -> pump(out, in));
            }
        } catch (IOException closed) {
            // The test is over.
        }
    }

    private static void pump(Socket from, Socket to) {
        try (InputStream in = from.getInputStream()) {
            in.transferTo(to.getOutputStream());
            to.shutdownOutput();
        } catch (IOException broken) {
            close(from);
            close(to);
        }
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            // It is closed all the same.
        }
    }

    @Override
    public void close() throws IOException {
        listener.close();
        pumps.shutdownNow();
    }
}

package org.ripewood;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A line to a service that can be cut and mended, and that can lose answers: what is sent arrives,
 * and nothing comes back. While it is cut nothing listens on its port.
 */
final class WeakLine implements AutoCloseable {

    private static final int BUFFER = 65_536;

    private final int servicePort;
    private final int port;
    private final ExecutorService pumps = Executors.newCachedThreadPool();
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private final AtomicInteger lost = new AtomicInteger();
    private volatile ServerSocket listener;
    private volatile String losesAnswersTo = "";

    private WeakLine(int servicePort, ServerSocket listener) {
        this.servicePort = servicePort;
        this.listener = listener;
        this.port = listener.getLocalPort();
    }

    static WeakLine to(int servicePort) throws IOException {
        var line = new WeakLine(servicePort, listening(0));
        line.listen();
        return line;
    }

    int port() {
        return port;
    }

    void cut() throws IOException {
        listener.close();
        open.forEach(WeakLine::close);
        open.clear();
    }

    void mend() throws IOException {
        listener = listening(port);
        listen();
    }

    /** From now on what answers a request that begins so is lost; empty for none. */
    void loseAnswersTo(String requestLine) {
        losesAnswersTo = requestLine;
    }

    /** How many answers were lost. */
    int lost() {
        return lost.get();
    }

    private static ServerSocket listening(int port) throws IOException {
        var socket = new ServerSocket();
        socket.setReuseAddress(true);
        socket.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
        return socket;
    }

    private void listen() {
        var listening = listener;
        pumps.execute(() -> accept(listening));
    }

    private void accept(ServerSocket listening) {
        try {
            while (true) {
                var browser = listening.accept();
                var service = new Socket(InetAddress.getLoopbackAddress(), servicePort);
                open.add(browser);
                open.add(service);
                var call = new Call(browser, service);
                pumps.execute(call::there);
                pumps.execute(call::back);
            }
        } catch (IOException closed) {
            // It is cut, or the test is over.
        }
    }

    /** One connection. */
    private final class Call {

        private final Socket browser;
        private final Socket service;
        private volatile boolean answerIsLost;

        Call(Socket browser, Socket service) {
            this.browser = browser;
            this.service = service;
        }

        void there() {
            var buffer = new byte[BUFFER];
            try {
                for (int n = read(browser, buffer); n >= 0; n = read(browser, buffer)) {
                    var begins = new String(buffer, 0, n, StandardCharsets.ISO_8859_1);
                    if (!losesAnswersTo.isEmpty() && begins.startsWith(losesAnswersTo)) {
                        answerIsLost = true;
                    }
                    service.getOutputStream().write(buffer, 0, n);
                }
            } catch (IOException broken) {
                // The other end is told below.
            }
            end();
        }

        void back() {
            var buffer = new byte[BUFFER];
            try {
                for (int n = read(service, buffer); n >= 0; n = read(service, buffer)) {
                    if (answerIsLost) {
                        lost.incrementAndGet();
                        break;
                    }
                    browser.getOutputStream().write(buffer, 0, n);
                }
            } catch (IOException broken) {
                // The other end is told below.
            }
            end();
        }

        private int read(Socket socket, byte[] buffer) throws IOException {
            return socket.getInputStream().read(buffer);
        }

        private void end() {
            close(browser);
            close(service);
            open.remove(browser);
            open.remove(service);
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
        cut();
        pumps.shutdownNow();
    }
}

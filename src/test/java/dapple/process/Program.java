package dapple.process;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;

/** The packaged program as a process of its own, with a small heap, on whatever port is free. */
public final class Program implements AutoCloseable {
    private static final Pattern PORT = Pattern.compile("Tomcat started on port (\\d+)");
    private static final Pattern READY = Pattern.compile("(Started DappleApplication)");

    private final Process process;
    private final Output output;
    private final URI address;

    private Program(Process process, Output output) throws InterruptedException {
        this.process = process;
        this.output = output;
        this.address = URI.create("http://127.0.0.1:" + output.await(PORT));
        output.await(READY);
    }

    /** Starts on the Java of this build, and waits until pages are served. */
    public static Program start(Path data, String... arguments) throws IOException, InterruptedException {
        return start(Path.of(System.getProperty("java.home"), "bin", "java"), data, arguments);
    }

    static Program start(Path java, Path data, String... arguments) throws IOException, InterruptedException {
        return start(command(java, 0, data, arguments), data);
    }

    /** The same at a port where it has been before. */
    public static Program startAt(int port, Path data, String... arguments) throws IOException, InterruptedException {
        return start(command(Path.of(System.getProperty("java.home"), "bin", "java"), port, data, arguments), data);
    }

    private static Program start(List<String> command, Path data) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .directory(data.toFile())
                .redirectErrorStream(true)
                .start();
        Output output = new Output();
        Thread reader = new Thread(() -> output.readFrom(process.inputReader()), "output of the program");
        reader.setDaemon(true);
        reader.start();
        try {
            return new Program(process, output);
        } catch (InterruptedException | AssertionError notReady) {
            process.destroyForcibly();
            throw notReady;
        }
    }

    /** Without the optimising compiler, which costs more than it gives in a short life; what is measured has it. */
    private static List<String> command(Path java, int port, Path data, String... arguments) {
        String compiler = System.getProperty("dapple.program.compiler", "-XX:TieredStopAtLevel=1");
        List<String> command =
                new ArrayList<>(List.of(java.toString(), "-Xmx256m", "-XX:+UseSerialGC", compiler, "-jar"));
        command.add(jar().toString());
        command.addAll(List.of("--server.address=127.0.0.1", "--server.port=" + port, "--dapple.data=" + data));
        command.addAll(List.of(arguments));
        return command;
    }

    /** The jar that the build has packaged. */
    static Path jar() {
        return Path.of(Objects.requireNonNull(System.getProperty("dapple.jar"), "dapple.jar is set by the build"));
    }

    public URI address() {
        return address;
    }

    /** The first group of the pattern in the program's log, waited for. */
    String logged(Pattern pattern) throws InterruptedException {
        return output.await(pattern);
    }

    /** Ends it without warning. @return the exit value: 128 and the number of the signal */
    public int kill() throws InterruptedException {
        return process.destroyForcibly().waitFor();
    }

    /** Asks it to end, and waits until it has. */
    public void stop() throws InterruptedException {
        process.destroy();
        process.waitFor();
    }

    @Override
    public void close() {
        process.destroyForcibly().onExit().join();
    }
}

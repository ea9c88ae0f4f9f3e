package wherefrom.server;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import wherefrom.job.settings.ServerAddress;

/** A server of one test's own, which is killed without warning and started again. */
final class Mortal implements AutoCloseable {
  private static final int MOST_TRIES = 100;

  private final EmbeddedPostgres server;
  private final Path data;
  private final List<String> command;
  private Process again;

  Mortal(Path folder) throws IOException {
    data = folder.resolve("data");
    server =
        EmbeddedPostgres.builder()
            .setDataDirectory(data)
            .setServerConfig("fsync", "on")
            .setServerConfig("shared_memory_type", "mmap")
            .start();
    command =
        Arrays.asList(Files.readString(Path.of("/proc/" + pid() + "/cmdline")).strip().split("\0"));
  }

  int port() {
    return server.getPort();
  }

  ServerAddress address(int port) {
    return new ServerAddress("localhost", port, "postgres", "postgres");
  }

  private long pid() throws IOException {
    return Long.parseLong(Files.readAllLines(data.resolve("postmaster.pid")).get(0));
  }

  /** As by {@code kill -9}, then started on the same files. */
  void killAndStart() throws IOException, InterruptedException {
    ProcessHandle postmaster = ProcessHandle.of(pid()).orElseThrow();
    List<ProcessHandle> all = postmaster.descendants().toList();
    postmaster.destroyForcibly();
    all.forEach(ProcessHandle::destroyForcibly);
    postmaster.onExit().join();
    all.forEach(each -> each.onExit().join());
    start();
  }

  private void start() throws IOException, InterruptedException {
    List<String> words = new java.util.ArrayList<>(List.of("unshare", "-U"));
    if (!"root".equals(System.getProperty("user.name"))) {
      words.clear();
    }
    words.addAll(command);
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      again =
          new ProcessBuilder(words)
              .redirectErrorStream(true)
              .redirectOutput(data.getParent().resolve("again.log").toFile())
              .start();
      if (!again.waitFor(300, java.util.concurrent.TimeUnit.MILLISECONDS)) {
        return;
      }
    }
    throw new IOException(Files.readString(data.getParent().resolve("again.log")));
  }

  @Override
  public void close() throws IOException {
    if (again != null) {
      again.destroy();
      again.onExit().join();
    }
    server.close();
  }
}

package wherefrom.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import wherefrom.Main;

/** A command in a process of its own, which says at its end how much memory it took at most. */
final class PeakMemory {
  private static final Path STATUS = Path.of("/proc/self/status");

  private PeakMemory() {}

  public static void main(String[] arguments) {
    Runtime.getRuntime().addShutdownHook(new Thread(PeakMemory::tell));
    Main.main(arguments);
  }

  /** {@code peak heap 123456789 whole 234567890}, in bytes; the whole is 0 where nobody says it. */
  private static void tell() {
    long heap =
        ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .map(MemoryPoolMXBean::getPeakUsage)
            .mapToLong(usage -> usage.getUsed())
            .sum();
    System.err.println("peak heap " + heap + " whole " + whole());
  }

  private static long whole() {
    if (!Files.exists(STATUS)) {
      return 0;
    }
    try {
      return Files.readAllLines(STATUS).stream()
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToLong(line -> 1024 * Long.parseLong(line.replaceAll("\\D", "")))
          .sum();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

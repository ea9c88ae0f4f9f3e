package wherefrom.logbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * By what a logbook is known again without reading it: of each file its name, size and time, and
 * how it ends: with the sums of the last line and of the line before that, which names the one
 * before it, and so on to the first.
 */
final class FileStamp {
  /** The last two fields of an entry: {@code "prev":"…","crc":"…"} are 60 bytes. */
  private static final int TAIL = 64;

  private FileStamp() {}

  /** Of the files of a logbook, in their order; empty where there is none. */
  static List<String> of(Path job) throws IOException {
    List<String> stamp = new ArrayList<>();
    for (Map.Entry<Integer, Path> file : LogFiles.in(job, new RealDisk()).entrySet()) {
      Path path = file.getValue();
      BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
      byte[] tail = HeldFiles.read(path, Math.max(0, now.size() - TAIL), TAIL);
      String end = new String(tail, StandardCharsets.ISO_8859_1);
      long nanos = now.lastModifiedTime().to(TimeUnit.NANOSECONDS);
      stamp.add(file.getKey() + " " + now.size() + " " + nanos + " " + end);
    }
    return stamp;
  }
}

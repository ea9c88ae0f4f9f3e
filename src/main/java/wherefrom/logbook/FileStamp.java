package wherefrom.logbook;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;

/**
 * By what a logbook is known again without reading it: of each file its name, size and time, and the
 * sum of its end. The last line names the one before it, and so on to the first.
 */
final class FileStamp {
  /** Holds the last line of most logbooks. */
  private static final int TAIL = 1024;

  private FileStamp() {}

  /** Of the files of a logbook, in their order. */
  static ArrayNode of(Path job) throws IOException {
    ArrayNode stamp = EntryCodec.MAPPER.createArrayNode();
    for (Map.Entry<Integer, Path> file : LogFiles.in(job, new RealDisk()).entrySet()) {
      Path path = file.getValue();
      BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
      long from = Math.max(0, now.size() - TAIL);
      byte[] tail = HeldFiles.read(path, from, TAIL);
      stamp.add(
          String.join(
              " ",
              LogFiles.name(file.getKey()),
              String.valueOf(now.size()),
              now.lastModifiedTime().toString(),
              Sums.chain(tail)));
    }
    return stamp;
  }
}

package wherefrom.logbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import wherefrom.files.AtomicFile;
import wherefrom.files.Progress;

/**
 * Writes a job as one ZIP file, a manifest first. The job's files go in byte for byte; of
 * photographs that tell where they were taken, all but that.
 */
final class JobExport {
  /** 1 January 1980, the first day that ZIP knows: the same job always gives the same file. */
  private static final long NO_DATE = 315_532_800_000L;

  private final Path job;
  private final AtomicFile files;

  JobExport(Path job, AtomicFile files) {
    this.job = job;
    this.files = files;
  }

  void to(Path file) throws IOException {
    List<Manifest.Item> items = new ArrayList<>();
    for (String name : JobFiles.of(job)) {
      byte[] bytes = outgoing(name);
      items.add(new Manifest.Item(name, bytes.length, Sums.digest(bytes)));
    }
    Manifest manifest = manifest(items);
    files.write(file, out -> write(out, manifest));
  }

  private byte[] outgoing(String name) throws IOException {
    Path file = job.resolve(name);
    byte[] bytes = HeldFiles.read(file);
    return LogFiles.isOne(name)
        ? bytes
        : PhotoFiles.outgoing(String.valueOf(file.getFileName()), bytes);
  }

  /** A job whose opening is damaged goes out as it is, under its folder's name. */
  private Manifest manifest(List<Manifest.Item> items) {
    return Openings.find(job)
        .map(opened -> new Manifest(opened.name(), opened.engine(), items))
        .orElseGet(() -> new Manifest(folderName(), Manifest.NO_ENGINE, items));
  }

  private String folderName() {
    return String.valueOf(job.toAbsolutePath().normalize().getFileName());
  }

  private void write(OutputStream out, Manifest manifest) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out);
    put(zip, Manifest.FILE, manifest.json());
    int done = 0;
    for (Manifest.Item item : manifest.items()) {
      Progress.step(done++, manifest.items().size());
      byte[] bytes = outgoing(item.name());
      // A logbook may have grown since: what the manifest names goes in, no more.
      byte[] listed = Arrays.copyOf(bytes, Math.toIntExact(item.size()));
      if (bytes.length < listed.length || !Sums.digest(listed).equals(item.sha256())) {
        throw new IOException(item.name() + " changed while it was exported. Try again");
      }
      put(zip, item.name(), listed);
    }
    zip.finish();
  }

  private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(NO_DATE);
    zip.putNextEntry(entry);
    zip.write(bytes);
    zip.closeEntry();
  }
}

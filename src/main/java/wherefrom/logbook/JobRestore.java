package wherefrom.logbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import wherefrom.files.AtomicFile;
import wherefrom.files.DraftFiles;
import wherefrom.files.Folders;
import wherefrom.files.Progress;
import wherefrom.job.entry.JobOpened;

/**
 * Brings an exported job back. Everything is written to a folder of its own and compared with the
 * manifest before the folder gets its name; when anything does not agree, nothing is left.
 */
final class JobRestore {
  private static final int MOST_MANIFEST = 10_000_000;

  /** A logbook is packed to a tenth of its size or so; what shrinks far more is none. */
  private static final int MOST_SQUEEZED = 200;

  private final Path shelf;
  private final AtomicFile files;

  JobRestore(Path shelf, AtomicFile files) {
    this.shelf = shelf;
    this.files = files;
  }

  Path from(Path file) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      Manifest manifest = Manifest.read(bytes(zip, Manifest.FILE, MOST_MANIFEST));
      requireNothingElse(zip, manifest);
      requireNew(manifest);
      return restore(zip, manifest);
    }
  }

  /** The job on the shelf with the number of the one in the file. */
  Optional<Path> findThere(Path file) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      Manifest manifest = Manifest.read(bytes(zip, Manifest.FILE, MOST_MANIFEST));
      return FileShelf.jobFolders(shelf).stream()
          .filter(job -> Openings.find(job, manifest.engine()).isPresent())
          .findFirst();
    }
  }

  private static byte[] bytes(ZipFile zip, String name, long most) throws IOException {
    ZipEntry entry = zip.getEntry(name);
    if (entry == null) {
      throw new IOException("it holds no " + name + ".");
    }
    if (entry.getSize() > most || entry.getSize() / MOST_SQUEEZED > entry.getCompressedSize()) {
      throw new IOException(name + " is larger than it should be.");
    }
    try (InputStream in = zip.getInputStream(entry)) {
      byte[] bytes = in.readNBytes(Math.toIntExact(most) + 1);
      if (bytes.length > most) {
        throw new IOException(name + " is larger than it should be.");
      }
      return bytes;
    }
  }

  private static void requireNothingElse(ZipFile zip, Manifest manifest) throws IOException {
    Set<String> known = new HashSet<>();
    known.add(Manifest.FILE);
    manifest.items().forEach(item -> known.add(item.name()));
    Enumeration<? extends ZipEntry> entries = zip.entries();
    while (entries.hasMoreElements()) {
      String name = entries.nextElement().getName();
      if (!known.remove(name)) {
        throw new IOException("it holds \"" + name + "\", which its manifest does not list once.");
      }
    }
  }

  private void requireNew(Manifest manifest) throws IOException {
    for (Path job : FileShelf.jobFolders(shelf)) {
      Optional<JobOpened> there = Openings.find(job);
      if (there.isPresent() && there.get().engine() == manifest.engine()) {
        throw new IOException(
            "the same job is already there, in "
                + job
                + " (\""
                + there.get().name()
                + "\"). Move that folder to another place first.");
      }
    }
  }

  private Path restore(ZipFile zip, Manifest manifest) throws IOException {
    List<Path> made = Folders.missing(shelf);
    try {
      Folders.make(shelf);
      return restoreIn(zip, manifest);
    } catch (IOException | RuntimeException e) {
      Folders.removeEmpty(made);
      throw e;
    }
  }

  private Path restoreIn(ZipFile zip, Manifest manifest) throws IOException {
    Path temporary = DraftFiles.folder(shelf, ".import");
    try {
      int done = 0;
      for (Manifest.Item item : manifest.items()) {
        Progress.step(done++, manifest.items().size());
        byte[] bytes = bytes(zip, item.name(), item.size());
        if (bytes.length != item.size() || !Sums.digest(bytes).equals(item.sha256())) {
          throw new IOException(item.name() + " is damaged: its sum does not agree.");
        }
        files.write(temporary.resolve(item.name()), bytes);
      }
      requireSame(temporary, manifest);
      Path folder = FolderNames.free(shelf, manifest.job());
      Files.move(temporary, folder);
      Folders.force(shelf);
      return folder;
    } finally {
      Folders.remove(temporary);
    }
  }

  /** A job whose opening is damaged has no number; it comes back as it is. */
  private static void requireSame(Path job, Manifest manifest) throws IOException {
    int engine = Openings.find(job).map(JobOpened::engine).orElse(Manifest.NO_ENGINE);
    if (engine != manifest.engine()) {
      throw new IOException("its manifest is that of another job.");
    }
    if (LogScan.of(job, new RealDisk()).isUnused()) {
      throw new IOException("its logbook holds no entry.");
    }
  }
}

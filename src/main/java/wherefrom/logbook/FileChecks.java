package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.EngineJob;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.photos.Photograph;
import wherefrom.job.ports.CheckFinding;
import wherefrom.job.ports.CheckFinding.Severity;
import wherefrom.job.ports.JobChecks;

/** Checks a job's files: the logbook's sums and chain, and the photographs that it names. */
public final class FileChecks implements JobChecks {
  private static final String GO_BACK =
      "Keep this folder as it is. Go on with the copy on the USB drive, or an exported file.";

  @Override
  public List<CheckFinding> check(Path jobFolder) {
    requireJob(jobFolder);
    try {
      return findings(jobFolder, LogScan.of(jobFolder, new RealDisk()));
    } catch (IOException e) {
      throw new LogbookException(jobFolder + " cannot be read: " + DiskErrors.of(e) + ".", e);
    }
  }

  static void requireJob(Path jobFolder) {
    if (!LogFiles.isJob(jobFolder)) {
      throw new LogbookException(
          "There is no job in " + jobFolder + ". Choose the job's own folder.");
    }
  }

  /** What is to be said of a job whose logbook was read. */
  static List<CheckFinding> findings(Path jobFolder, FolderScan scanned) throws IOException {
    if (scanned.isUnused()) {
      return List.of(new CheckFinding(Severity.WARNING, FolderScan.unused(jobFolder), ""));
    }
    List<CheckFinding> findings = new ArrayList<>();
    logbook(scanned, findings);
    state(scanned, findings);
    photographs(jobFolder, scanned, findings);
    findings.add(summary(scanned, findings));
    findings.sort(Comparator.comparing(CheckFinding::severity));
    return findings;
  }

  private static CheckFinding summary(FolderScan scanned, List<CheckFinding> findings) {
    boolean damaged = findings.stream().anyMatch(f -> f.severity() == Severity.DAMAGED);
    return new CheckFinding(
        damaged ? Severity.NOTE : Severity.SOUND,
        scanned.entries().size() + " entries were read; each agrees with its sums.",
        "");
  }

  private static void logbook(FolderScan scanned, List<CheckFinding> findings) {
    scanned
        .trouble()
        .ifPresent(
            trouble ->
                findings.add(
                    new CheckFinding(
                        trouble.newer() ? Severity.WARNING : Severity.DAMAGED,
                        trouble.sentence(scanned.entries().size()),
                        trouble.newer() ? "Use the newer version of Wherefrom." : GO_BACK)));
    for (CutLine cut : scanned.cuts()) {
      boolean last = scanned.lastCut().filter(cut::equals).isPresent();
      findings.add(
          new CheckFinding(
              last ? Severity.WARNING : Severity.NOTE,
              cut.sentence(),
              last ? "Open the job and look at the last step." : ""));
    }
    if (scanned.voided() > 0) {
      findings.add(
          new CheckFinding(
              Severity.NOTE,
              scanned.voided() + " entries failed when they were written and do not count.",
              ""));
    }
  }

  /** Whether what was read is whole and makes a job; nothing is damaged in a newer version's. */
  static boolean isSound(FolderScan scanned) {
    return scanned.trouble().map(Trouble::newer).orElse(true) && findFault(scanned).isEmpty();
  }

  private static void state(FolderScan scanned, List<CheckFinding> findings) {
    findFault(scanned)
        .ifPresent(
            fault ->
                findings.add(
                    new CheckFinding(
                        Severity.DAMAGED,
                        "The entries do not make a job: " + fault + ".",
                        GO_BACK)));
  }

  private static Optional<String> findFault(FolderScan scanned) {
    try {
      EngineJob.of(scanned.entries());
      return Optional.empty();
    } catch (IllegalStateException e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
  }

  private static void photographs(Path job, FolderScan scanned, List<CheckFinding> findings)
      throws IOException {
    Set<String> named = new HashSet<>();
    for (LoggedEntry logged : scanned.entries()) {
      logged
          .each()
          .flatMap(one -> Photograph.find(one).stream())
          .forEach(it -> named.add(it.file()));
    }
    Set<String> there = new HashSet<>(JobFiles.photos(job));
    for (String name : named.stream().sorted().toList()) {
      if (!there.contains(name)) {
        findings.add(
            new CheckFinding(Severity.DAMAGED, "Photograph " + name + " is not there.", GO_BACK));
      }
    }
    for (String name : there.stream().sorted().toList()) {
      photograph(job.resolve(PhotoFiles.FOLDER).resolve(name), named.contains(name), findings);
    }
  }

  private static void photograph(Path file, boolean named, List<CheckFinding> findings)
      throws IOException {
    if (!Files.isRegularFile(file) || !PhotoFiles.isWhole(file)) {
      findings.add(
          new CheckFinding(
              Severity.DAMAGED, "Photograph " + file.getFileName() + " is damaged.", GO_BACK));
    } else if (!named) {
      findings.add(
          new CheckFinding(
              Severity.NOTE,
              "Photograph " + file.getFileName() + " is kept, but no entry names it.",
              ""));
    }
  }
}

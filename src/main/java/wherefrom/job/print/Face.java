package wherefrom.job.print;

/** What is printed on one label. */
public sealed interface Face permits TagFace, ScannerFace {}

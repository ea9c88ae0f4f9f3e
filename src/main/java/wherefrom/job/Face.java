package wherefrom.job;

/** What is printed on one label. */
public sealed interface Face permits TagFace, ScannerFace {}

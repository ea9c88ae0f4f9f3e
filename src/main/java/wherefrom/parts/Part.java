package wherefrom.parts;

/**
 * One physical piece, or several small pieces kept on one wire.
 *
 * @param item counted from 1 within the job; a replacement part counts on
 * @param home the place it came out of; of a replacement part, the place it was bought for
 * @param issue the issue of its tag that counts, 1 to 99
 * @param pieces how many pieces hang on its tag, at least 1
 * @param fresh true of a replacement part that is new
 */
public record Part(int item, Place home, int issue, int pieces, boolean fresh) {

  public PartKind kind() {
    return home.kind();
  }

  public Part withIssue(int newIssue) {
    return new Part(item, home, newIssue, pieces, fresh);
  }

  public Part withHome(Place newHome) {
    return new Part(item, newHome, issue, pieces, fresh);
  }

  public Part withPieces(int count) {
    return new Part(item, home, issue, count, fresh);
  }

  /** In words: {@code pushrod of cylinder 3, exhaust}. */
  public String words() {
    return (fresh ? "new " : "") + home.words();
  }

  /** The code on its tag. */
  public TagCode code(int engine) {
    return new TagCode(TagType.PART, engine, item, issue);
  }
}

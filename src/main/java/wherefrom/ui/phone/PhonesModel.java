package wherefrom.ui.phone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.job.phone.PhoneDoor.Invitation;
import wherefrom.job.phone.PhoneDoor.Joined;

/** What the screen of the phones says. */
final class PhonesModel {
  /** What cannot be hidden on a home network. */
  static final String OPEN_WORDS = "Others on this network can read along. Use one you trust.";

  static final String NO_NETWORK =
      "This computer is on no network of its own. Join the phone's Wi-Fi first.";

  /** A row: a phone that has joined, or words alone. */
  record Row(String heading, String words, Optional<Joined> phone) {}

  private final PhonesIn phones;

  PhonesModel(PhonesIn phones) {
    this.phones = phones;
  }

  boolean isOpen() {
    return phones.door().isPresent();
  }

  Optional<Invitation> invitation() {
    return phones.door().flatMap(PhoneDoor::invitation);
  }

  /** What the code is for, or what stands where none is. */
  String headline() {
    return invitation()
        .map(code -> "Photograph it. The phone shows:")
        .orElse("No phone can join now. Press New code.");
  }

  /** The same in fewer words. */
  String brief() {
    return invitation().map(code -> "The phone shows:").orElse("Press New code.");
  }

  /** The number that phone and window both show; empty where no phone can join. */
  String number() {
    return invitation().map(Invitation::number).orElse("");
  }

  /** What phones are for, where no door is open. */
  static List<Row> about() {
    return List.of(
        words("Photograph a tag: the phone shows right place or STOP."),
        words("Both are on one network. No app, no account."),
        words("It ends with the job, by Stop, or unused for 3 hours."),
        words(OPEN_WORDS));
  }

  private static Row words(String words) {
    return new Row("", words, Optional.empty());
  }

  /** Who has joined, then at which address; that nobody has goes without saying beside the code. */
  List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    List<Joined> joined = phones.door().map(PhoneDoor::joined).orElseGet(List::of);
    joined.forEach(one -> rows.add(new Row(name(one), now(one), Optional.of(one))));
    if (joined.isEmpty() && invitation().isEmpty()) {
      rows.add(words("No phone has joined yet."));
    }
    phones.door().map(door -> words("Address: " + door.address())).ifPresent(rows::add);
    rows.add(words(OPEN_WORDS));
    return rows;
  }

  /** {@code Phone 2, Anna}. */
  static String name(Joined phone) {
    String number = "Phone " + phone.number();
    return phone.name().isEmpty() ? number : number + ", " + phone.name();
  }

  private static String now(Joined phone) {
    return phone.near() ? "joined" : "joined, not heard of just now";
  }
}

package wherefrom.job.phone;

import java.util.List;
import wherefrom.rules.WayOut;

/**
 * A key of a phone.
 *
 * @param with what it is about, such as a code; may be empty
 * @param words what stands on it
 * @param more a second line in small letters; may be empty
 */
public record PhoneKey(PhoneDeed deed, String with, String words, String more) {
  /** The tag where nothing else is first. */
  static final PhoneKey PHOTOGRAPH = photograph("Photograph a tag", "fill the picture");

  static PhoneKey of(PhoneDeed deed, String words) {
    return new PhoneKey(deed, "", words, "");
  }

  static PhoneKey photograph(String words, String more) {
    return new PhoneKey(PhoneDeed.PHOTOGRAPH, "", words, more);
  }

  /** What leads out of a stop: a scan, or what is done at the window. */
  static List<PhoneKey> of(WayOut way) {
    if (way == WayOut.TAKE_OUT || way == WayOut.MAKE_ROOM) {
      return List.of(new PhoneKey(PhoneDeed.TAKE_OUT, "", "Hold: it is out", way.more()));
    }
    return way.isScan() ? List.of(photograph(way.words(), way.more())) : List.of();
  }
}

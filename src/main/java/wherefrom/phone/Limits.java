package wherefrom.phone;

import java.time.Duration;

/**
 * What phones, and whoever else is on the network, may ask of the door.
 *
 * @param picture the most bytes of a picture
 * @param words the most bytes of anything else
 * @param body how long a body may take to come
 * @param key how long a key can be used
 * @param wrongKeys after so many wrong keys no key counts until a new one is asked for
 * @param unused after so long without a phone the door closes
 * @param phones how many can have joined at once
 * @param burst so many requests may come at once from a phone
 * @param perSecond and so many a second after that
 */
record Limits(
    long picture,
    int words,
    Duration body,
    Duration key,
    int wrongKeys,
    Duration unused,
    int phones,
    int burst,
    int perSecond) {

  static final Limits USUAL =
      new Limits(
          25_000_000,
          4_000,
          Duration.ofSeconds(30),
          Duration.ofMinutes(10),
          10,
          Duration.ofHours(3),
          12,
          40,
          8);

  Limits withBody(Duration shorter) {
    return new Limits(picture, words, shorter, key, wrongKeys, unused, phones, burst, perSecond);
  }

  Limits withBurst(int fewer, int slower) {
    return new Limits(picture, words, body, key, wrongKeys, unused, phones, fewer, slower);
  }
}

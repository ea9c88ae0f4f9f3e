package wherefrom.job.phone;

import java.util.List;
import java.util.Optional;

/** An open door for phones; safe for several threads. */
public interface PhoneDoor extends AutoCloseable {

  /**
   * A phone that has joined.
   *
   * @param number by which it can be put out, from 1
   * @param name as its person typed it; may be empty
   * @param near whether it was heard of in the last half minute
   */
  record Joined(int number, String name, boolean near) {}

  /**
   * What the next phone joins by, once.
   *
   * @param link the address with the key in it
   * @param symbol the same as a QR symbol
   * @param number three digits that the phone shows too
   */
  record Invitation(String link, Squares symbol, String number) {}

  /** The address, without a key. */
  String address();

  /** What the next phone joins by; empty where wrong keys came, or as many have joined as may. */
  Optional<Invitation> invitation();

  /** Makes a new key: the one before is worth nothing. */
  void invite();

  List<Joined> joined();

  /** A phone may do nothing more here. */
  void putOut(int number);

  /** False once it was closed, or nobody used it for hours. */
  boolean isOpen();

  @Override
  void close();
}

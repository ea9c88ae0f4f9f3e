package wherefrom.job.phone;

import java.io.IOException;
import java.util.List;

/** The door by which phones on this network join a job. Nothing of it runs before it is opened. */
public interface Phones {

  /**
   * An address of this computer that phones near it can reach.
   *
   * @param address such as {@code 192.168.1.23}
   * @param network what it is on, such as {@code Wi-Fi, wlan0}
   */
  record Nearby(String address, String network) {}

  /** The addresses on networks of one's own, the likeliest first; none where it is on none. */
  List<Nearby> list();

  /**
   * Opens the door at one of these addresses.
   *
   * @throws IOException with a plain sentence when it cannot be opened
   */
  PhoneDoor open(Nearby at, PhoneHost host) throws IOException;
}

package wherefrom.job.phone;

import java.io.IOException;
import java.util.List;

/** The door by which phones on this network join a job. Nothing of it runs before it is opened. */
public interface Phones {

  /**
   * An address of this computer that phones near it can reach.
   *
   * @param address such as {@code 192.168.1.23}
   * @param name what the system calls the network
   */
  record Nearby(String address, Medium medium, String name) {
    /** {@code Wi-Fi, wlan0}; the name alone where it does not tell more. */
    public String network() {
      return medium == Medium.UNKNOWN ? name : medium.words + ", " + name;
    }
  }

  /** How one gets onto a network, as far as its name tells. */
  enum Medium {
    RADIO("Wi-Fi"),
    CABLE("Cable"),
    /** Between programs of this computer, or through it: no phone is on it. */
    WITHIN("Within this computer"),
    UNKNOWN("");

    private final String words;

    Medium(String words) {
      this.words = words;
    }
  }

  /** The addresses on networks of one's own, the likeliest first; none where it is on none. */
  List<Nearby> list();

  /**
   * Opens the door at one of these addresses.
   *
   * @throws IOException with a plain sentence when it cannot be opened
   */
  PhoneDoor open(Nearby at, PhoneHost host) throws IOException;
}

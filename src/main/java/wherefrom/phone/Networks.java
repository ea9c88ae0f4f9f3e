package wherefrom.phone;

import java.io.IOException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import wherefrom.job.phone.Phones.Medium;
import wherefrom.job.phone.Phones.Nearby;

/**
 * The addresses of this computer on networks of one's own. One that can be reached from the whole
 * internet is none, nor is the computer's own.
 */
final class Networks {
  private static final Logger LOGGER = Logger.getLogger("wherefrom");

  /** Networks between programs of this computer, or through it: no phone is on them. */
  private static final List<String> WITHIN =
      List.of("docker", "br-", "veth", "virbr", "vbox", "vmnet", "vethernet", "tun", "tap", "wg");

  /** Beginnings of the names of radios; another word for one is in its long name. */
  private static final List<String> RADIOS = List.of("wl", "wifi", "ath");

  private Networks() {}

  static List<Nearby> list() {
    List<Nearby> found = new ArrayList<>();
    try {
      for (NetworkInterface network : Collections.list(NetworkInterface.getNetworkInterfaces())) {
        if (network.isUp() && !network.isLoopback()) {
          addresses(network).map(address -> nearby(network, address)).forEach(found::add);
        }
      }
    } catch (IOException e) {
      LOGGER.log(Level.WARNING, "The networks of this computer cannot be listed", e);
    }
    return inOrder(found);
  }

  /** Radios first; what no phone is on is left out where there is anything else. */
  static List<Nearby> inOrder(List<Nearby> found) {
    List<Nearby> near = found.stream().filter(one -> one.medium() != Medium.WITHIN).toList();
    return (near.isEmpty() ? found : near)
        .stream().sorted(Comparator.comparing(one -> one.medium() != Medium.RADIO)).toList();
  }

  private static Stream<InetAddress> addresses(NetworkInterface network) {
    return network
        .inetAddresses()
        .filter(Inet4Address.class::isInstance)
        .filter(InetAddress::isSiteLocalAddress);
  }

  private static Nearby nearby(NetworkInterface network, InetAddress address) {
    return nearby(address.getHostAddress(), network.getName(), network.getDisplayName());
  }

  /** What the system calls it in full is shown where that tells more. */
  static Nearby nearby(String address, String name, String display) {
    return new Nearby(address, medium(name, display), display.equals(name) ? name : display);
  }

  private static Medium medium(String name, String display) {
    String both = (name + " " + display).toLowerCase(Locale.ROOT);
    if (starts(name, WITHIN) || both.contains("virtual")) {
      return Medium.WITHIN;
    }
    if (starts(name, RADIOS) || both.contains("wireless") || both.contains("wi-fi")) {
      return Medium.RADIO;
    }
    return starts(name, List.of("eth", "enp", "eno", "ens", "enx")) ? Medium.CABLE : Medium.UNKNOWN;
  }

  private static boolean starts(String name, List<String> beginnings) {
    return beginnings.stream().anyMatch(name.toLowerCase(Locale.ROOT)::startsWith);
  }
}

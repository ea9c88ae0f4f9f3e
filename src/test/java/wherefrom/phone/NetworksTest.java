package wherefrom.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.phone.Phones.Medium;
import wherefrom.job.phone.Phones.Nearby;

/** Which of a computer's networks a phone may be on, in plain words. */
class NetworksTest {
  private static String words(String name, String display) {
    return Networks.nearby("192.168.1.2", name, display).network();
  }

  @Test
  void networksAreCalledByWhatTheyAre() {
    assertThat(words("wlan0", "wlan0")).isEqualTo("Wi-Fi, wlan0");
    assertThat(words("wlp3s0", "wlp3s0")).isEqualTo("Wi-Fi, wlp3s0");
    assertThat(words("net4", "Some Wireless Adapter")).isEqualTo("Wi-Fi, Some Wireless Adapter");
    assertThat(words("enp3s0", "enp3s0")).isEqualTo("Cable, enp3s0");
    assertThat(words("docker0", "docker0")).isEqualTo("Within this computer, docker0");
    assertThat(words("en0", "en0")).isEqualTo("en0");
  }

  @Test
  void theRadioComesFirstAndWhatNoPhoneIsOnIsLeftOut() {
    Nearby cable = new Nearby("10.0.0.2", Medium.CABLE, "enp3s0");
    Nearby within = new Nearby("172.17.0.1", Medium.WITHIN, "docker0");
    Nearby radio = new Nearby("192.168.1.2", Medium.RADIO, "wlan0");
    assertThat(Networks.inOrder(List.of(within, cable, radio))).containsExactly(radio, cable);
    assertThat(Networks.inOrder(List.of(within))).containsExactly(within);
  }

  @Test
  void everyAddressIsOnANetworkOfOnesOwn() {
    assertThat(Networks.list())
        .allMatch(one -> one.address().matches("(10|172|192)\\.[0-9]+\\.[0-9]+\\.[0-9]+"));
  }
}

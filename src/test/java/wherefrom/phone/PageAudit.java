package wherefrom.phone;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The page held against the rules of the window, as the browser has laid it out: how large what is
 * touched is and how far apart, how large the letters are, how well they are told from their
 * ground, and that nothing is cut off. Glass of 360 pixels of a style sheet is about 66 mm wide; it
 * is held at half the distance of the window, so that letters may be smaller.
 */
final class PageAudit {
  private static final String SCRIPT =
      """
      const faults = [];
      const MM = 5.45, KEY = 18, PAD = 15, GAP = 2.6, LETTER = 3.6;
      const seen = one => one.offsetParent !== null && one.getClientRects().length > 0;
      const box = one => one.getBoundingClientRect();
      const name = one => (one.innerText || one.id || one.tagName).trim().replace(/\\s+/g, ' ').slice(0, 30);
      const keys = Array.from(document.querySelectorAll('button, label, input:not([type=file])'))
        .filter(seen).filter(one => !one.matches('.field'));
      keys.forEach(one => {
        const at = box(one);
        const least = (one.matches('.pad *') ? PAD : KEY) * MM - 0.5;
        if (at.width < least || at.height < least) {
          faults.push('SIZE ' + name(one) + ' ' + Math.round(at.width) + 'x' + Math.round(at.height));
        }
        if (at.left < -0.5 || at.right > innerWidth + 0.5) {
          faults.push('OUT ' + name(one));
        }
      });
      keys.forEach((one, index) => keys.slice(index + 1).forEach(two => {
        const a = box(one), b = box(two);
        const x = Math.max(b.left - a.right, a.left - b.right, 0);
        const y = Math.max(b.top - a.bottom, a.top - b.bottom, 0);
        const gap = Math.max(x, y);
        if (gap < GAP * MM - 0.5) {
          faults.push('GAP ' + name(one) + ' | ' + name(two) + ' ' + Math.round(gap));
        }
      }));
      const rgb = words => words.match(/[\\d.]+/g).map(Number);
      const ground = one => {
        for (let at = one; at; at = at.parentElement) {
          if (at.matches('.tag')) {
            return rgb(getComputedStyle(at, '::after').backgroundColor);
          }
          const color = rgb(getComputedStyle(at).backgroundColor);
          if (color.length < 4 || color[3] > 0.99) {
            return color;
          }
        }
        return [255, 255, 255];
      };
      const light = color => {
        const [r, g, b] = color.slice(0, 3).map(part => {
          const share = part / 255;
          return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
        });
        return 0.2126 * r + 0.7152 * g + 0.0722 * b;
      };
      const ratio = (a, b) => {
        const [high, low] = [light(a), light(b)].sort((x, y) => y - x);
        return (high + 0.05) / (low + 0.05);
      };
      const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      for (let text = walker.nextNode(); text; text = walker.nextNode()) {
        const one = text.parentElement;
        if (!text.nodeValue.trim() || !seen(one)) {
          continue;
        }
        const style = getComputedStyle(one);
        const capital = parseFloat(style.fontSize) * 0.75 / MM;
        if (capital < LETTER) {
          faults.push('LETTERS ' + name(one) + ' ' + capital.toFixed(1) + ' mm');
        }
        const contrast = ratio(rgb(style.color), ground(one));
        if (contrast < 7) {
          faults.push('CONTRAST ' + name(one) + ' ' + contrast.toFixed(1));
        }
        if (one.scrollWidth > one.clientWidth + 1 && style.display !== 'inline') {
          faults.push('CUT ' + name(one));
        }
      }
      keys.filter(one => one.matches('.key, input')).forEach(one => {
        const rim = ratio(rgb(getComputedStyle(one).borderTopColor), ground(one.parentElement));
        if (rim < 3) {
          faults.push('RIM ' + name(one) + ' ' + rim.toFixed(1));
        }
      });
      if (document.fonts.check('20px B612') === false) {
        faults.push('FONT');
      }
      const high = document.documentElement.scrollHeight;
      if (high > innerHeight + 1 && !document.querySelector('#choices button, #sheet-list button')) {
        faults.push('SCROLLS ' + high + ' of ' + innerHeight);
      }
      return faults;
      """;

  private PageAudit() {}

  /** What is wrong with what is seen now, in words. */
  static List<String> faults(Browser phone) throws IOException {
    List<String> faults = new ArrayList<>();
    for (JsonNode one : phone.run(SCRIPT)) {
      faults.add(one.asText());
    }
    return faults;
  }
}

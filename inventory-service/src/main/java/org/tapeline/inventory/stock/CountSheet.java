package org.tapeline.inventory.stock;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What was counted at a place. */
public record CountSheet(String place, List<Line> lines) {
  /** More pieces than this at one place are a slip of the finger. */
  static final int MOST = 100_000;

  private static final String CODE = "[a-z0-9][a-z0-9-]{0,59}";

  public CountSheet {
    lines = lines == null ? List.of() : List.copyOf(lines);
  }

  /**
   * What was counted of a part.
   *
   * @param model the helmet model that it is kept for; empty for any
   * @param counted pieces, 0 or more
   * @param book what the books said when the variance was looked at
   * @param reason a code of the policy; empty when the books agree
   */
  public record Line(String item, String model, int counted, int book, String reason) {
    public Line {
      item = text(item);
      model = text(model);
      reason = text(reason);
    }

    private static String text(String said) {
      return said == null ? "" : said.strip();
    }

    public int variance() {
      return counted - book;
    }
  }

  /** What is wrong with a line, counted from 0, beside which of its fields. */
  public record Wrong(String field, int line, String sentence) {}

  /** What is wrong with it; empty when nothing is. */
  public List<Wrong> wrong(StockPolicy policy) {
    List<Wrong> wrong = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      if (!line.item().matches(CODE) || !line.model().matches("|" + CODE)) {
        wrong.add(new Wrong("item", i, "Give the part's code, such as jaw-pad-15mm."));
      }
      if (!seen.add(line.item() + " " + line.model())) {
        wrong.add(new Wrong("item", i, "This part stands there twice. Add them up."));
      }
      if (line.counted() < 0 || line.counted() > MOST) {
        wrong.add(new Wrong("counted", i, "Write a whole number from 0 to " + MOST + "."));
      }
      if (line.variance() != 0 && !policy.explainsVariance(line.reason())) {
        wrong.add(new Wrong("reason", i, "Say what explains the difference best."));
      }
    }
    if (lines.isEmpty()) {
      wrong.add(new Wrong("counted", 0, "Write what you counted, in one line or more."));
    }
    return wrong;
  }
}

package org.tapeline.sizing.draft;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.sizing.chart.ChartPublished.Size;
import org.tapeline.sizing.chart.ModelName;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.draft.DraftPreview.PlayerLine;
import org.tapeline.sizing.draft.DraftPreview.SizeLine;

/**
 * A preview in words.
 *
 * @param refused why it was not published; empty when it was not tried
 */
public record DraftView(DraftPreview p, String refused) {

  public String modelSaid() {
    return ModelName.said(p.model());
  }

  /** For a form; another one each time. */
  public UUID commandId() {
    return UuidV7.next();
  }

  public List<SizeText> sizes() {
    return p.sizes().stream().map(SizeText::new).toList();
  }

  public List<PlayerText> players() {
    return p.players().stream().map(PlayerText::new).toList();
  }

  public boolean more() {
    return p.affected() > p.players().size();
  }

  /** A size in words. */
  public record SizeText(SizeLine line) {
    public String size() {
      return SizeRange.said(line.size());
    }

    public String nowMm() {
      return SizeChange.millimetres(range(line.now()));
    }

    public String nowInches() {
      return SizeChange.inches(range(line.now()));
    }

    public String thenMm() {
      return SizeChange.millimetres(range(line.then()));
    }

    public String thenInches() {
      return SizeChange.inches(range(line.then()));
    }

    private static Optional<SizeRange> range(Size size) {
      return Optional.ofNullable(size).map(Size::range);
    }
  }

  /** A player in words. */
  public record PlayerText(PlayerLine line) {
    public String now() {
      return line.now() == null ? "No chart yet" : line.now().said();
    }

    public String then() {
      return line.then().said();
    }
  }
}

package org.tapeline.inventory.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.label.LabelSheet.Spot;

@DisplayName("A sheet of labels")
class LabelSheetTest {
  private static LabelSheet sheet(double leftMm, double labelWidthMm) {
    return new LabelSheet("s-1", "Sheet", 210, 297, 3, 8, leftMm, 0, labelWidthMm, 37, 0, 0, 1.5);
  }

  @Test
  @DisplayName("has its labels one after the other along the rows, then on the next page")
  void spots() {
    LabelSheet sheet = sheet(0, 70);
    assertThat(sheet.perPage()).isEqualTo(24);
    assertThat(sheet.spot(0)).isEqualTo(new Spot(0, 0, 0));
    assertThat(sheet.spot(4)).isEqualTo(new Spot(0, 70, 37));
    assertThat(sheet.spot(24)).isEqualTo(new Spot(1, 0, 0));
  }

  @Test
  @DisplayName("that is wider than the paper, or has labels too small to scan, is refused")
  void refused() {
    assertThatThrownBy(() -> sheet(1, 70)).hasMessageContaining("wider or higher");
    assertThatThrownBy(() -> sheet(0, 40)).hasMessageContaining("at least 45 mm");
  }

  @Test
  @DisplayName("of the policy keeps every label on the paper, apart from all others")
  void onFile() {
    for (LabelSheet sheet : new LabelSheets().all()) {
      Spot last = sheet.spot(sheet.perPage() - 1);
      assertThat(last.page()).isZero();
      assertThat(last.leftMm() + sheet.labelWidthMm())
          .isLessThanOrEqualTo(sheet.pageWidthMm() + 0.05);
      assertThat(last.topMm() + sheet.labelHeightMm())
          .isLessThanOrEqualTo(sheet.pageHeightMm() + 0.05);
      long apart = IntStream.range(0, sheet.perPage()).mapToObj(sheet::spot).distinct().count();
      assertThat(apart).isEqualTo(sheet.perPage());
    }
  }

  @Test
  @DisplayName("writes a short tag large, and a long one as large as there is room")
  void points() {
    LabelSheet sheet = sheet(0, 70);
    assertThat(sheet.tagPoints("LV9")).isEqualTo(20);
    assertThat(sheet.tagPoints("A12425GABC1234002M")).isCloseTo(7.7, within(1.0));
  }
}

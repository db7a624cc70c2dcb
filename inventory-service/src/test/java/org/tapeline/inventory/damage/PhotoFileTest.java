package org.tapeline.inventory.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.inventory.damage.Pictures.byCamera;
import static org.tapeline.inventory.damage.Pictures.of;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A photo of damage")
class PhotoFileTest {

  private static Photo taken(byte[] file) {
    return PhotoFile.take(file).photo().orElseThrow();
  }

  private static BufferedImage image(Photo photo) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(photo.jpeg()));
  }

  @Test
  @DisplayName("is made no larger than 1600 pixels, and no small one larger")
  void size() {
    Photo large = taken(of("jpeg", 4000, 3000));
    assertThat(large.width()).isEqualTo(1600);
    assertThat(large.height()).isEqualTo(1200);
    Photo small = taken(of("png", 300, 500));
    assertThat(small.width()).isEqualTo(300);
    assertThat(small.height()).isEqualTo(500);
  }

  @Test
  @DisplayName("keeps nothing that the camera wrote beside the pixels")
  void nothingBeside() {
    byte[] sent = byCamera(400, 300, 1, "GPS 40.1 N 105.2 W");
    assertThat(new String(sent, StandardCharsets.ISO_8859_1)).contains("GPS 40.1", "Exif");
    String kept = new String(taken(sent).jpeg(), StandardCharsets.ISO_8859_1);
    assertThat(kept).doesNotContain("GPS", "Exif");
  }

  @ParameterizedTest(name = "held as {0}")
  @CsvSource({
    "1, 400, 300, left", "2, 400, 300, right", "3, 400, 300, right", "4, 400, 300, left",
    "5, 300, 400, top", "6, 300, 400, top", "7, 300, 400, bottom", "8, 300, 400, bottom"
  })
  @DisplayName("stands upright, however the camera was held")
  void upright(int orientation, int width, int height, String redAt) throws IOException {
    BufferedImage image = image(taken(byCamera(400, 300, orientation, "")));
    assertThat(image.getWidth()).isEqualTo(width);
    assertThat(image.getHeight()).isEqualTo(height);
    int x = redAt.equals("left") ? 20 : redAt.equals("right") ? width - 20 : width / 2;
    int y = redAt.equals("top") ? 20 : redAt.equals("bottom") ? height - 20 : height / 2;
    assertThat((image.getRGB(x, y) >> 16) & 0xFF).isGreaterThan(200);
    assertThat(image.getRGB(x, y) & 0xFF).isLessThan(60);
  }

  @Test
  @DisplayName("of a wrong kind, broken, empty or too large is refused with what to do")
  void refused() {
    byte[] good = of("jpeg", 400, 300);
    assertThat(PhotoFile.take(of("gif", 40, 30)).refused()).contains("JPEG or PNG");
    assertThat(PhotoFile.take("<html>".getBytes(StandardCharsets.UTF_8)).refused())
        .contains("JPEG or PNG");
    assertThat(PhotoFile.take(new byte[0]).refused()).contains("JPEG or PNG");
    assertThat(PhotoFile.take(Arrays.copyOf(good, 300)).refused()).contains("JPEG or PNG");
    assertThat(PhotoFile.take(new byte[Photo.MOST_BYTES + 1]).refused()).contains("20 MB");
  }

  @Test
  @DisplayName("with a broken note of how it was held is taken as upright")
  void brokenNote() {
    byte[] sent = byCamera(400, 300, 6, "");
    sent[6 + 4 + 9] = 0x7F;
    assertThat(PhotoFile.take(sent).photo()).isPresent();
    assertThat(Turn.ofExif(new byte[3])).isEqualTo(Turn.NONE);
  }
}

package org.tapeline.inventory.allocation;

import java.util.List;

/**
 * Who gets which helmet.
 *
 * @param left who gets none, those of the highest rank first
 * @param minutes what it costs all together, with the spares that are taken
 * @param proof that nobody could be served better
 */
public record Allotment(List<Given> given, List<Seeker> left, long minutes, OptimalityProof proof) {

  /**
   * A helmet for a player.
   *
   * @param minutes what it costs: way, size and model, certification; without spares
   */
  public record Given(Seeker seeker, FreeHelmet helmet, Seeker.Liking liking, int minutes) {
    public boolean travels() {
      return !helmet.place().equals(seeker.field());
    }
  }
}

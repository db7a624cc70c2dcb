package org.tapeline.proof.faults.process;

/** The room that a part has on its disk, which can be used up. */
public interface Quota {
  /** How it is done, in words. */
  String how();

  /** From now on the part can write no more. */
  void useUp();

  /** It can again. */
  void giveBack();
}

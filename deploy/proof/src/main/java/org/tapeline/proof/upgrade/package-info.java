/** A rolling upgrade: commands through copies of two versions, and what came of them. */
package org.tapeline.proof.upgrade;

/** The five-year outlook: how many helmets of each size will have to be bought, with bands. */
package org.tapeline.inventory.outlook;

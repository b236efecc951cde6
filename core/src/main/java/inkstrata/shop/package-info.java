/**
 * The shop floor: runs the line from artwork to separation through whatever plug-ins are there.
 *
 * <p>The last room of the core; it knows every other one. Read {@link inkstrata.shop.Separator} first.
 */
package inkstrata.shop;

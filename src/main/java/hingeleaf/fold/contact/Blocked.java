package hingeleaf.fold.contact;

/**
 * A stay that something keeps from being put away.
 *
 * @param stay piece id
 * @param against panel id of what it meets
 * @param turned how far it gets from where it is set, rad
 * @param whole how far it should go, rad
 */
public record Blocked(String stay, String against, double turned, double whole) {}

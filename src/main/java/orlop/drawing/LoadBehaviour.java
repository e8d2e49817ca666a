package orlop.drawing;

/** How a load draws its current when its voltage changes. */
public enum LoadBehaviour implements Named {
    POWER,
    CURRENT,
    RESISTANCE
}

package org.ripewood.materials;

/** What a container is for. */
public enum ContainerUse {
    NURSERY,
    TRAINING,
    SHOW
}

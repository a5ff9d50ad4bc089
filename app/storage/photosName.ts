/** By itself, because the first screen asks for the name and never for a picture. */
export const photosName = 'smallhours-photos'

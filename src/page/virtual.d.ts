declare module 'virtual:engine' {
  /** The core as one script: gzip, then base64. */
  const code: string
  export default code
}

/* pdf_object.c - objects of a document that several files of the room make (room: draw). */
#include "pdf_private.h"

HPDF_Dict dictionary_new(HPDF_Doc document)
{
    HPDF_Dict dictionary = HPDF_Dict_New(document->mmgr);

    if (dictionary == NULL || HPDF_Xref_Add(document->xref, dictionary) != HPDF_OK)
        return NULL;
    return dictionary;
}

HPDF_Dict stream_new(HPDF_Doc document, const unsigned char *bytes, size_t length)
{
    HPDF_Dict stream = HPDF_DictStream_New(document->mmgr, document->xref);

    if (stream == NULL)
        return NULL;
    stream->filter = HPDF_STREAM_FILTER_FLATE_DECODE;
    if (HPDF_Stream_Write(stream->stream, bytes, (HPDF_UINT)length) != HPDF_OK)
        return NULL;
    return stream;
}

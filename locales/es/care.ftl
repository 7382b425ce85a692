# Care poses, step by step.

care-sling-neutral = Cabestrillo con almohada, la mano hacia delante
    .start = Siéntese en una silla. Deje el brazo operado cerca del cuerpo.
    .step-1 = Meta el codo en el cabestrillo hasta el fondo.
    .step-2 = Apoye el antebrazo con la mano hacia delante.
    .step-3 = Cierre las correas. La mano queda un poco más alta que el codo.
    .step-4 = Compruebe que caben dos dedos bajo la correa.
    .mistake-1 = Una correa que se clava en el cuello. Ponga algo blando debajo.
    .mistake-2 = La muñeca cuelga por el borde.

care-sling-internal = Cabestrillo con el antebrazo sobre el vientre
    .start = Siéntese en una silla. Ponga el antebrazo operado sobre el vientre.
    .step-1 = Meta el codo en el cabestrillo hasta el fondo.
    .step-2 = Cierre la correa alrededor del cuello o de la espalda.
    .step-3 = La mano queda un poco más alta que el codo.
    .mistake-1 = El codo se sale del cabestrillo hacia delante.
    .mistake-2 = La muñeca cuelga por el borde.

care-rest-pillow = Descansar en una silla
    .start = Siéntese hacia atrás con una almohada a su lado.
    .step-1 = Ponga sobre la almohada el brazo en su cabestrillo.
    .step-2 = Deje bajar el hombro.
    .step-3 = Mantenga el codo por delante del cuerpo.
    .mistake-1 = El codo se va detrás de la espalda.

care-sleep-recline = Dormir con la espalda medio levantada
    .start = Haga una cuesta de almohadas o use un sillón que se echa hacia atrás.
    .step-1 = Recuéstese con el cabestrillo puesto.
    .step-2 = Ponga una almohada bajo el codo, de modo que pueda ver el codo.
    .step-3 = Ponga una almohada al otro lado para no rodar.
    .mistake-1 = Acostarse sobre el lado operado.
    .mistake-2 = El codo cae por detrás del cuerpo.

care-sleep-other-side = Dormir sobre el otro lado
    .start = Acuéstese sobre el otro lado con el cabestrillo puesto.
    .step-1 = Doble una almohada delante del pecho.
    .step-2 = Ponga el brazo sobre ella, del codo a la muñeca.
    .step-3 = Ponga una almohada detrás de la espalda.
    .mistake-1 = El brazo se cae hacia delante.

care-armpit-lean = Lavarse bajo el brazo
    .start = Quítese el cabestrillo. Agárrese a una silla con la otra mano.
    .step-1 = Inclínese hacia delante hasta que el brazo cuelgue un poco separado del cuerpo.
    .step-2 = Lave y seque la axila con la otra mano.
    .step-3 = Enderécese despacio. Sujete la muñeca operada.
    .mistake-1 = Levantar el brazo solo.
    .mistake-2 = Inclinarse tanto que pierda el equilibrio.

care-shower-hang = De pie en la ducha
    .start = Cubra la herida con un vendaje que no deje pasar el agua. Quítese el cabestrillo.
    .step-1 = Deje colgar el brazo junto al cuerpo, o ponga la mano en el vientre.
    .step-2 = No deje que el agua toque la herida.
    .step-3 = Séquese con la otra mano y póngase el cabestrillo.
    .mistake-1 = Buscar el jabón con el brazo operado.

care-wash-at-basin = Lavarse en el lavabo
    .start = Póngase de pie ante el lavabo, sin el cabestrillo.
    .step-1 = Apoye la mano operada en el vientre o deje que cuelgue.
    .step-2 = Lávese con la otra mano.
    .mistake-1 = Apoyarse en la mano operada.

care-dress-shirt-first = Ponerse una camisa: primero el brazo operado
    .start = Siéntese. Tome una camisa ancha que se abra por delante.
    .step-1 = Inclínese un poco hacia delante y deje colgar el brazo operado.
    .step-2 = Suba la manga sobre él con la otra mano.
    .step-3 = Pase la camisa por la espalda.
    .step-4 = Meta el otro brazo y luego póngase el cabestrillo.
    .mistake-1 = Buscar la manga con el brazo operado.
    .mistake-2 = Torcer el brazo hacia atrás.

care-undress-shirt-last = Quitarse una camisa: el brazo operado al final
    .start = Siéntese y quítese el cabestrillo.
    .step-1 = Saque primero el otro brazo.
    .step-2 = Pase la camisa hacia delante.
    .step-3 = Deje colgar el brazo operado y baje la manga.
    .mistake-1 = Tirar del brazo hacia atrás.

care-sling-off-hang = Quitarse el cabestrillo sin peligro
    .start = Siéntese. Sujete la muñeca operada con la otra mano.
    .step-1 = Abra las correas con la otra mano.
    .step-2 = Baje el antebrazo despacio hasta que el brazo cuelgue.
    .step-3 = Deje que cuelgue cerca del cuerpo.
    .mistake-1 = Dejar caer el brazo.
    .mistake-2 = Estirar el brazo hacia el lado.
